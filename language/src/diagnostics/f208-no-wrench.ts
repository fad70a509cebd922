// F208: a torque that no wrench of the tool list reaches.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export const noWrench = defineDiagnostic<{
  readonly torque: string;
  readonly name: string;
  readonly wrenches: readonly string[];
}>({
  code: 'F208',
  name: 'no-wrench',
  severity: 'hint',
  message: (d) => `no torque wrench in the tool list is made for ${d.torque} on \`${d.name}\``,
  advice: (d) => `the list has ${d.wrenches.join(', ')}`,
  why: `A wrench is checked at 20, 60 and 100 % of its top value (ISO 6789); outside its marks it says nothing. Either the shop has another wrench, which belongs in the tool list so that "You will need" prints it, or the figure is wrong.`,
  wrong: boltCatalogue(
    '2 of M16x2.0, class 8.8, hex 24 mm',
    'torque 190 N·m, per "S-1"',
    '#          ^^^^^^^ F208',
  ).concat('\ntools\n  torque-wrench: Torque wrench\n    torque 20 to 100 N·m\n'),
  right: boltCatalogue('2 of M10x1.5, class 8.8, hex 16 mm', 'torque 48 N·m, per "S-1"').concat(
    '\ntools\n  torque-wrench: Torque wrench\n    torque 20 to 100 N·m\n',
  ),
});
