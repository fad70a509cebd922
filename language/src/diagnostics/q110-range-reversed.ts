// A range whose first value is the greater one.
import { defineDiagnostic } from './define.js';

export const rangeReversed = defineDiagnostic<{ readonly low: string; readonly high: string }>({
  code: 'Q110',
  name: 'range-reversed',
  severity: 'error',
  message: ({ low, high }) => `the range runs backwards: ${low} is more than ${high}`,
  why: `One of the two figures may be wrong. If both are right, the smaller one comes first.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 to 105 N·m, per "HL-1"
#          ^^^^^^^^^^^^^^ Q110
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
