// S102: still on.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillOn = defineDiagnostic<StateWords>({
  code: 'S102',
  name: 'still-on',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} still on`,
  advice: () => 'take it off first; what is put on for the job alone is declared under `temporary`',
  why: 'A thing can only be put on after it has come off. Either the line that takes it off is missing, or it stands further down.',
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
    remove bracket-bolt

installation
  step: Fit the bracket
    install bracket, bracket-bolt
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S102
    torque bracket-bolt
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
