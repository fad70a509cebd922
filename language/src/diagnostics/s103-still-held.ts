// S103: still held.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillHeld = defineDiagnostic<StateWords>({
  code: 'S103',
  name: 'still-held',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectIs} still held by ${d.names}`,
  why: 'A part that is pulled while something still holds it bends, breaks or drops. Everything that holds it comes off first (`held by`), and what clamps it is loosened (`clamped by`).',
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
    remove bracket
#   ^^^^^^^^^^^^^^ S103
    remove bracket-bolt

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

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
`,
});
