// A hole: a value that somebody still has to find.
import { defineDiagnostic } from './define.js';

export const valueNotKnown = defineDiagnostic<{ readonly what: string }>({
  code: 'Q120',
  name: 'value-not-known',
  severity: 'question',
  message: ({ what }) => `${what} is not known yet`,
  why: `A \`?\` keeps the place of a figure that is still to be found. It prints as a blank box, and the procedure cannot be released until it is answered.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque ?, per "HL-1"
#          ^ Q120
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
