// L302: more goes in than the system holds.
import { defineDiagnostic } from './define.js';
import { oilJob } from './oil-example.js';

export const fillOverSystem = defineDiagnostic<{
  readonly name: string;
  readonly amount: string;
  readonly holds: string;
}>({
  code: 'L302',
  name: 'fill-over-system',
  severity: 'error',
  message: (d) => `${d.amount} of \`${d.name}\` is more than its fill of ${d.holds}`,
  why: `Overfilled oil foams, blows seals and ends on the brakes. Either the amount here is wrong, or the entry is, or part of it stays in a cooler or converter; then the entry should say the larger figure.`,
  wrong: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil, 2.5 L, until level at fill-plug', '#                  ^^^^^ L302'],
  ),
  right: oilJob(
    ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
    ['drain axle-oil'],
    ['fill axle-oil, 1.9 L, until level at fill-plug'],
  ),
});
