// A reference in the text to a thing that is not there.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const unknownReference = defineDiagnostic<{ readonly name: string; readonly near: readonly string[] }>(
  {
    code: 'N308',
    name: 'unknown-reference',
    severity: 'error',
    message: ({ name }) => `the text refers to \`${name}\`, which is not declared`,
    advice: ({ near }) => didYouMean(near) ?? 'a brace that is meant as such is written \\{',
    why: `What stands in braces is replaced by the name or the figure of a thing. With no such thing the guide would print a gap.`,
    wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore: Down to {boer}.
#                        ^^^^ N308
`,
    right: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore: Down to {bore}.
`,
  },
);
