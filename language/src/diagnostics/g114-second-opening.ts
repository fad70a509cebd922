// A second procedure or catalogue line.
import { defineDiagnostic } from './define.js';

export const secondOpening = defineDiagnostic<{ readonly head: string }>({
  code: 'G114',
  name: 'second-opening',
  severity: 'error',
  message: ({ head }) => `a file has one opening line; this \`${head}\` is the second`,
  advice: () => 'put it in a file of its own',
  why: `One file holds one procedure or one catalogue, so that each has its own revisions and can be used by others.`,
  wrong: `procedure A-1: Mirror, replace
procedure A-2: Mirror glass, replace
# <<<<<<<<< G114`,
  right: `procedure A-1: Mirror, replace`,
});
