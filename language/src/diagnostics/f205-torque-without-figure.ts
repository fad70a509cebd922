// F205: `torque` on a set that has no figure.
import { boltJob } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const torqueWithoutFigure = defineDiagnostic<{ readonly name: string }>({
  code: 'F205',
  name: 'torque-without-figure',
  severity: 'question',
  message: (d) => `how tight is \`${d.name}\`? It is torqued here and has no torque`,
  advice: (d) =>
    `write its torque in the entry of \`${d.name}\`, \`torque ?\` while it is not known, or \`tighten\` here if no figure exists`,
  why: `The guide prints the figure in large type at the line that tightens. Without one the technician guesses, or walks to the binder.`,
  wrong: boltJob(
    ['2 of M8x1.25, class 8.8, hex 13 mm'],
    'torque bracket-bolt',
    '#          ^^^^^^^^^^^^ F205',
  ),
  right: boltJob(['2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'], 'torque bracket-bolt'),
});
