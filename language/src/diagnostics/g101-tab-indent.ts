// A tab where two spaces a level are wanted.
import { defineDiagnostic } from './define.js';

export const tabIndent = defineDiagnostic<{ readonly lines: number }>({
  code: 'G101',
  name: 'tab-indent',
  severity: 'warning',
  message: ({ lines }) =>
    lines === 1 ? 'a tab indents this line' : `tabs indent ${lines} lines, this is the first`,
  advice: () => 'the fix writes two spaces for each level',
  why: `A tab is as wide as each program likes. A block that looks right on one screen may belong to another line on the next, so levels are counted in spaces, two for each.`,
  wrong: `procedure A-1: Mirror, replace

parts
\tmirror: Door mirror
# < G101`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror`,
});
