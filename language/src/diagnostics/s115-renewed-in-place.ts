// S115: renewed in place.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const renewedInPlace = defineDiagnostic<StateWords>({
  code: 'S115',
  name: 'renewed-in-place',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} renewed while still on`,
  advice: () => 'take it off first, or say that it rides `in` what has come off',
  why: 'A thing is renewed when it is off. If it never comes off, the new one stays in its box and the worn one stays in the vehicle.',
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
    renew bracket
#   ^^^^^^^^^^^^^ S115
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
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
    renew bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
`,
});
