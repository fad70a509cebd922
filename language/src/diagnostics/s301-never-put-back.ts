// S301: never put back.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverPutBack = defineDiagnostic<StateWords>({
  code: 'S301',
  name: 'never-put-back',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} taken off here and never put back`,
  why: 'What comes off must go back on, on every vehicle the procedure applies to. Else the technician ends with a part on the bench, or the vehicle leaves without it.',
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

places
  bracket-seat: Seat of the bracket

removal
  step: Take the bracket off
    remove bracket-bolt, bracket
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S301

installation
  step: Clean the seat
    clean bracket-seat
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

places
  bracket-seat: Seat of the bracket

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    clean bracket-seat
    install bracket, bracket-bolt
    torque bracket-bolt
`,
});
