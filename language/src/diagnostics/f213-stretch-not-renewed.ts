// F213: bolts turned by an angle that are used again.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const stretchNotRenewed = defineDiagnostic<{
  readonly name: string;
  readonly angle: string;
  readonly percent: number | undefined;
}>({
  code: 'F213',
  name: 'stretch-not-renewed',
  severity: 'hint',
  message: (d) =>
    d.percent === undefined
      ? `are the bolts of \`${d.name}\` new each time? They are turned ${d.angle} behind the torque`
      : `are the bolts of \`${d.name}\` new each time? ${d.angle} over this grip takes them past yield (${d.percent} %)`,
  advice: () => '`renew` if they are, `grip` with the clamped length to have the stretch worked out',
  why: `Bolts tightened by torque and angle are usually stretched past yield on purpose and are then used once (common practice; the maker's sheet decides). Where \`grip\` gives the clamped length and the turn stays under yield, nothing is asked.`,
  wrong: boltCatalogue(
    '2 of M10x1.5, class 10.9, hex 16 mm',
    'torque 30 N·m then 90°, per "S-1"',
    '#          ^^^^^^^^^^^^^^^ F213',
  ),
  right: boltCatalogue('2 of M10x1.5, class 10.9, hex 16 mm', 'torque 30 N·m then 90°, per "S-1"', 'renew'),
});
