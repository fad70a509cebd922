// F203: a torque so low that it hardly clamps.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';
import type { JointWords } from './f201-over-yield.js';

export const torqueLow = defineDiagnostic<JointWords>({
  code: 'F203',
  name: 'torque-low',
  severity: 'question',
  message: (d) => `${d.torque} on ${d.joint} is ${d.percent} % of its proof load: is that meant?`,
  advice: (d) => d.suggestion ?? (d.chart === undefined ? undefined : `a chart gives about ${d.chart}`),
  why: `Under a tenth of the proof load a bolt hardly clamps. Some joints want just that: a soft cover, a plastic part, a plug on a crush washer. Then say so with \`accept F203\` and the reason. Elsewhere a unit was mistaken: inch for foot, or a decimal point was lost.

Without a class, only wheel nuts and wheel bolts are asked about, which are never so loose (common practice).`,
  wrong: boltCatalogue(
    '2 of M8x1.25, class 8.8, hex 13 mm',
    'torque 2.5 N·m, per "S-1"',
    '#          ^^^^^^^ F203',
  ),
  right: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'),
});
