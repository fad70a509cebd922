// S401: paths differ.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const pathsDiffer = defineDiagnostic<StateWords>({
  code: 'S401',
  name: 'paths-differ',
  severity: 'error',
  message: (d) => `the paths of this test do not come back together: ${d.names}`,
  advice: () =>
    'do the same on both ways round: put back in the branch what it takes off, or end the branch with `stop`',
  why: 'What is on, off or torqued behind an `if` must not depend on which way the technician went, unless that way ends in `stop`.',
  wrong: `procedure A-13: Bracket, look over

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

inspection
  step: Look at the bracket
    inspect bracket
      reject: cracks
      if rejected
#     ^^^^^^^^^^^ S401
        remove bracket-bolt, bracket
        renew bracket
`,
  right: `procedure A-13: Bracket, look over

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

inspection
  step: Look at the bracket
    inspect bracket
      reject: cracks
      if rejected
        remove bracket-bolt, bracket
        renew bracket
        install bracket, bracket-bolt
        torque bracket-bolt
`,
});
