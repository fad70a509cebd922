// An operation that is performed and is nowhere.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const unknownOperation = defineDiagnostic<{
  readonly operation: string;
  readonly from: string | undefined;
  readonly isFile: boolean;
  readonly near: readonly string[];
}>({
  code: 'N304',
  name: 'unknown-operation',
  severity: 'error',
  message: ({ operation, from, isFile }) =>
    isFile
      ? `there is no procedure ${from}`
      : `${from === undefined ? 'this procedure' : from} has no operation \`${operation}\``,
  advice: ({ near }) => didYouMean(near),
  why: `The work that the line stands for would be left out, and what it takes apart or puts together with it.`,
  wrong: `procedure WH-01: Mirror, look at

parts
  mirror: Door mirror

inspection
  operation look: Look at the mirror
    step: Look at it
      clean mirror
  perform lok
#         ^^^ N304
`,
  right: `procedure WH-01: Mirror, look at

parts
  mirror: Door mirror

inspection
  operation look: Look at the mirror
    step: Look at it
      clean mirror
  perform look
`,
});
