// A quantity of another kind than its place wants.
import { defineDiagnostic } from './define.js';

export const wrongDimension = defineDiagnostic<{
  readonly written: string;
  readonly found: string;
  readonly wanted: string;
  readonly example: string;
}>({
  code: 'Q102',
  name: 'wrong-dimension',
  severity: 'error',
  message: ({ written, found, wanted }) => `${written} is ${found}; here goes ${wanted}`,
  advice: ({ example }) => `write it as in ${example}`,
  why: `A pressure in the place of a torque is a figure copied from the wrong line of the sheet. Whoever sets the wrench to the bare number may break the bolt or leave it loose.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 psi, per "HL-1"
#          ^^^^^^^ Q102
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
