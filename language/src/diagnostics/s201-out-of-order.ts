// S201: out of order.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const outOfOrder = defineDiagnostic<StateWords>({
  code: 'S201',
  name: 'out-of-order',
  severity: 'error',
  message: (d) =>
    `${d.names} ${d.are} ${d.wanted} only later, ${d.object === '' || d.object === d.names ? 'and needed here' : `and must be before ${d.object}`}`,
  why: 'The work cannot be done in the order written: this line needs what a later line does. The fix moves the later line up.',
  wrong: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket
    torque bracket-bolt
#   ^^^^^^^^^^^^^^^^^^^ S201
    install bracket-bolt
`,
  right: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
`,
});
