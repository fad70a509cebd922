// A range whose ends are of two kinds.
import { defineDiagnostic } from './define.js';

export const rangeTwoKinds = defineDiagnostic<{ readonly first: string; readonly second: string }>({
  code: 'Q111',
  name: 'range-two-kinds',
  severity: 'error',
  message: ({ first, second }) => `the range goes from ${first} to ${second}`,
  advice: () => 'write both ends in one unit',
  why: `Both ends of a range are measured in one unit. Two kinds in one range are two figures from two lines of the sheet.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 105 kPa to 115 N·m, per "HL-1"
#          ^^^^^^^^^^^^^^^^^^ Q111
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 105 to 115 N·m, per "HL-1"
`,
});
