// A wrench named on the line that is not made for the torque.
import { defineDiagnostic } from './define.js';

const job = (wrench: string) => `procedure A-1: Union nut, tighten

sources
  S-1: Exhaust sheet, issue 1

fasteners
  union-nut: Union nut
    1 of M14x1.5, hex 17 mm
    torque 30 N·m, per "S-1"

tools
  small-wrench: Small torque wrench
    torque 2 to 25 N·m
  large-wrench: Large torque wrench
    torque 20 to 100 N·m

installation
  step: Tighten the nut
    torque union-nut with ${wrench}
`;

export const wrenchOutOfRange = defineDiagnostic<{
  readonly wrench: string;
  readonly range: string;
  readonly torque: string;
  readonly name: string;
}>({
  code: 'F216',
  name: 'wrench-out-of-range',
  severity: 'warning',
  message: ({ wrench, range, torque, name }) =>
    `\`${wrench}\` is made for ${range}, and \`${name}\` takes ${torque}`,
  advice: () => 'name another wrench, or none: the guide then takes one from the tool list',
  why: `Past its marks a wrench does not click, or clicks at once. Whoever trusts it leaves the bolt loose or breaks it (ISO 6789 checks a wrench at 20, 60 and 100 % of its top value).`,
  wrong: `${job('small-wrench')}#                         ^^^^^^^^^^^^ F216
`,
  right: job('large-wrench'),
});
