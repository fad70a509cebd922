// F212: more fasteners than the set has.
import { boltJob } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const countAboveSet = defineDiagnostic<{
  readonly count: number;
  readonly name: string;
  readonly set: number;
}>({
  code: 'F212',
  name: 'count-above-set',
  severity: 'error',
  message: (d) => `\`${d.name}\` is a set of ${d.set}, and ${d.count} are asked for`,
  why: `Either the set has more fasteners than its entry says, and some are forgotten when the vehicle goes back together, or the line counts ones that belong to another set.`,
  wrong: boltJob(
    ['2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'],
    'snug 3 of bracket-bolt',
    '#        ^ F212',
    'torque bracket-bolt',
  ),
  right: boltJob(
    ['2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'],
    'snug bracket-bolt',
    'torque bracket-bolt',
  ),
});
