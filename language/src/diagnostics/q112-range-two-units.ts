// A range whose ends have two units of one kind.
import { defineDiagnostic } from './define.js';

export const rangeTwoUnits = defineDiagnostic<{
  readonly what: 'range' | 'limit';
  readonly first: string;
  readonly second: string;
}>({
  code: 'Q112',
  name: 'range-two-units',
  severity: 'error',
  message: ({ what, first, second }) => `the ${what} has two units, ${first} and ${second}`,
  advice: ({ what }) =>
    what === 'range'
      ? 'write both ends in one unit'
      : 'write the limit and the figure of a new part in one unit',
  why: `A range is written in one unit, after its second value. The other system is computed and printed beside it. The same holds for a limit and the figure of a new part: millimetres beside inches are a slip of the pen.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 85 ft·lbf to 130 N·m, per "HL-1"
#          ^^^^^^^^^^^^^^^^^^^^ Q112
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 to 130 N·m, per "HL-1"
`,
});
