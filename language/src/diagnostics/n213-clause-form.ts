// A figure where a clause names things, or the reverse.
import { defineDiagnostic } from './define.js';

export const clauseForm = defineDiagnostic<{
  readonly clause: string;
  readonly verb: string;
  readonly expected: string;
  /** A figure is expected, and words stand there. */
  readonly isFigure?: boolean;
}>({
  code: 'N213',
  name: 'clause-form',
  severity: 'error',
  message: ({ clause, verb, expected }) => `\`${clause}\` of \`${verb}\` takes ${expected}`,
  advice: ({ isFigure }) => (isFigure ? 'what is said in words goes after a colon' : undefined),
  why: `Some clauses name a thing, some give a figure. With the wrong one the line says something else than is meant.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore with 3 mm
#                   ^^^^ N213
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

supplies
  bore-cleaner: Cleaner
    cleaner

inspection
  step: Look at the bore
    clean bore with bore-cleaner
`,
});
