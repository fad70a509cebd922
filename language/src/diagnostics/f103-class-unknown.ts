// F103: a property class or grade that no standard has.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const classUnknown = defineDiagnostic<{
  readonly problem: string;
  readonly nearest: string | undefined;
}>({
  code: 'F103',
  name: 'class-unknown',
  severity: 'error',
  message: (d) => d.problem,
  advice: (d) => (d.nearest === undefined ? undefined : `did you mean \`${d.nearest}\`?`),
  why: `The class is the mark on the head and says how much the bolt bears. A class that does not exist cannot be bought, and the torque cannot be checked against it.

Classes are read by ISO 898-1 and 898-2 (\`class 10.9\`, nuts \`class 8\`), ISO 3506 (\`class A2-70\`) and SAE J429 (\`grade 8\`).`,
  wrong: boltCatalogue(
    '2 of M8x1.25, class 10.8, hex 13 mm',
    '#                       ^^^^ F103',
    'torque 25 N·m, per "S-1"',
  ),
  right: boltCatalogue('2 of M8x1.25, class 10.9, hex 13 mm', 'torque 25 N·m, per "S-1"'),
});
