// A branch that asks for a side which the limit does not have.
import { defineDiagnostic } from './define.js';
import { readingJob } from './reading-example.js';

export const limitSideMissing = defineDiagnostic<{
  readonly name: string;
  readonly side: 'lower' | 'upper' | undefined;
}>({
  code: 'Q123',
  name: 'limit-side-missing',
  severity: 'warning',
  message: ({ name, side }) =>
    side === undefined
      ? `\`${name}\` says no figure to hold a reading against`
      : `\`${name}\` has no ${side} limit, so this is never done`,
  advice: ({ side }) =>
    side === undefined
      ? 'write `at least`, `at most` or a range in its entry, or `at most ?` where it is not known yet'
      : `ask for the other side, or write \`${side === 'lower' ? 'at least' : 'at most'}\` in its entry`,
  why: `Whoever reads the gauge must know which readings are good. A branch on a side without a figure is never taken, however bad the part is.`,
  wrong: readingJob(
    'measure gap',
    '  if below limit',
    '#     ^^^^^^^^^^^^^^ Q123',
    '    note: Order a new mirror.',
  ),
  right: readingJob('measure gap', '  if above limit', '    note: Order a new mirror.'),
});
