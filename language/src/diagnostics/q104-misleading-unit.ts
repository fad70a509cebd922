// A spelling that its place settles, and that says something else to the next reader.
import { defineDiagnostic } from './define.js';

export const misleadingUnit = defineDiagnostic<{
  readonly spelling: string;
  readonly symbol: string;
  readonly other: string;
}>({
  code: 'Q104',
  name: 'misleading-unit',
  severity: 'warning',
  message: ({ spelling, symbol, other }) =>
    `\`${spelling}\` is read as ${symbol} here, but also stands for ${other}`,
  why: `Capitals change a unit: nm are nanometres, N·m newton metres. The place leaves one meaning, so the file is read by it; on paper the next reader has only the letters.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 nm, per "HL-1"
#              ^^ Q104
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
