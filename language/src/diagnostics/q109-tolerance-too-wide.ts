// A tolerance that is wider than its value.
import { defineDiagnostic } from './define.js';

export const toleranceTooWide = defineDiagnostic<{ readonly tolerance: string; readonly value: string }>({
  code: 'Q109',
  name: 'tolerance-too-wide',
  severity: 'warning',
  message: ({ tolerance, value }) => `the tolerance of ${tolerance} is wider than ${value} itself`,
  why: `A tolerance that reaches below nothing is nearly always a slip: a decimal point lost, or per cent meant.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 100 ±150 N·m, per "HL-1"
#          ^^^^^^^^^^^^ Q109
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 100 ±15 N·m, per "HL-1"
`,
});
