// A count where the verb takes the whole set.
import { defineDiagnostic } from './define.js';

export const countNotTaken = defineDiagnostic<{ readonly verb: string }>({
  code: 'N210',
  name: 'count-not-taken',
  severity: 'error',
  message: ({ verb }) => `\`${verb}\` takes no count`,
  why: `A count picks some of a set of fasteners. This verb acts on the whole set, so the count would be dropped.`,
  wrong: `procedure A-1: Bore, look at

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

inspection
  step: Look at the bore
    clean 2 of bracket-bolt
#         ^^^^ N210
`,
  right: `procedure A-1: Bore, look at

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

inspection
  step: Look at the bore
    clean bracket-bolt
`,
});
