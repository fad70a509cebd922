// F206: `tighten` on a set that has a figure.
import { boltJob } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const tightenWithFigure = defineDiagnostic<{ readonly name: string; readonly torque: string }>({
  code: 'F206',
  name: 'tighten-with-figure',
  severity: 'warning',
  message: (d) => `\`${d.name}\` has a torque of ${d.torque}, and \`tighten\` asks for none`,
  advice: () => '`torque` brings the figure into the guide',
  why: `\`tighten\` is for clamps, clips and screws that rightly have no figure. On a set with one, the guide would not print it and nobody would take a wrench that clicks.`,
  wrong: boltJob(
    ['2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'],
    'tighten bracket-bolt',
    '#   ^^^^^^^ F206',
  ),
  right: boltJob(['2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'], 'torque bracket-bolt'),
});
