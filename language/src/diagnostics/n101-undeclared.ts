// A name that nothing declares.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const undeclared = defineDiagnostic<{ readonly name: string; readonly near: readonly string[] }>({
  code: 'N101',
  name: 'undeclared',
  severity: 'error',
  message: ({ name }) => `\`${name}\` is not declared`,
  advice: ({ near }) => didYouMean(near),
  why: `A name stands for one thing of the vehicle, and everything known of it hangs on its entry. A name without an entry is a slip of the fingers, or the entry is still to be written; until then nothing about it is checked.`,
  wrong: `procedure A-1: Bore, look at

inspection
  step: Look at the bore
    clean bore
#         ^^^^ N101
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
`,
});
