// A tolerance with its lower side first.
import { defineDiagnostic } from './define.js';

export const toleranceReversed = defineDiagnostic<{ readonly written: string; readonly mended: string }>({
  code: 'Q108',
  name: 'tolerance-reversed',
  severity: 'warning',
  message: ({ written, mended }) => `the tolerance ${written} stands the wrong way round; write ${mended}`,
  why: `The upper side comes first, as on a drawing. A reader who expects that order takes the one figure for the other.`,
  wrong: `catalogue: Limits

sources
  HL-1: Brake sheet

limits
  disc-thickness: Disc thickness
    22.0 -0.1/+0.3 mm, per "HL-1"
#        ^^^^^^^^^ Q108
`,
  right: `catalogue: Limits

sources
  HL-1: Brake sheet

limits
  disc-thickness: Disc thickness
    22.0 +0.3/-0.1 mm, per "HL-1"
`,
});
