// A number without its unit.
import { defineDiagnostic } from './define.js';

export const missingUnit = defineDiagnostic<{
  readonly number: string;
  readonly wanted: string;
  readonly example: string;
}>({
  code: 'Q105',
  name: 'missing-unit',
  severity: 'error',
  message: ({ number, wanted }) => `${number} has no unit; here goes ${wanted}`,
  advice: ({ example }) => `write it as in ${example}`,
  why: `A bare 85 is read as newton metres by one technician and as foot-pounds by the next.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115, per "HL-1"
#          ^^^ Q105
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m, per "HL-1"
`,
});
