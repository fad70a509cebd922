// A tolerance in another unit than its value.
import { defineDiagnostic } from './define.js';

export const toleranceUnit = defineDiagnostic<{ readonly tolerance: string; readonly unit: string }>({
  code: 'Q113',
  name: 'tolerance-unit',
  severity: 'error',
  message: ({ tolerance, unit }) => `the tolerance is in ${tolerance}, its value in ${unit}`,
  why: `A tolerance is written in the unit of its value, or in per cent of it.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m ±5 ft·lbf, per "HL-1"
#          ^^^^^^^^^^^^^^^^^ Q113
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 ±7 N·m, per "HL-1"
`,
});
