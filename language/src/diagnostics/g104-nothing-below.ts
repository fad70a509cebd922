// A line below one that takes no block.
import { defineDiagnostic } from './define.js';

export const nothingBelow = defineDiagnostic<{ readonly head: string }>({
  code: 'G104',
  name: 'nothing-below',
  severity: 'error',
  message: ({ head }) => `nothing goes below \`${head}\``,
  advice: () => 'move the line to the left, or give it a line above that it belongs to',
  why: `Deeper lines belong to the line above them. This one takes none, so the checker does not know what they mean and leaves them out.`,
  wrong: `procedure A-1: Mirror, replace

labour 25 min
  crew 2
# ^^^^ G104`,
  right: `procedure A-1: Mirror, replace

labour 25 min
crew 2`,
});
