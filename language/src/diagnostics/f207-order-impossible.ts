// F207: a tightening order that cannot be read or done.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const orderImpossible = defineDiagnostic<{ readonly problem: string }>({
  code: 'F207',
  name: 'order-impossible',
  severity: 'error',
  message: (d) => d.problem,
  why: `The order is drawn in the guide from this word and the number of fasteners. An order that cannot be drawn leaves the technician to choose one, and a cover tightened from one end leaks at the other.

Patterns follow ASME PCC-1 practice: \`star\` for 3 to 24 on a circle, \`cross\` for an even number, \`inside-out\` and \`outside-in\` over rows, or the positions written out (\`1-3-5-2-4\`).`,
  wrong: boltCatalogue(
    '5 of M8x1.25, class 8.8, hex 13 mm',
    'torque 25 N·m, order cross, per "S-1"',
    '#                        ^^^^^ F207',
  ),
  right: boltCatalogue('5 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, order star, per "S-1"'),
});
