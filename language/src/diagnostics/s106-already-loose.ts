// S106: already loose.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const alreadyLoose = defineDiagnostic<StateWords>({
  code: 'S106',
  name: 'already-loose',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} already loose`,
  why: 'Loosening what is already loose says that a line is missing between the two, or that one of them is left over.',
  wrong: `procedure A-1: Bracket, align

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
  step: Slacken the bracket
    loosen bracket-bolt
    loosen bracket-bolt
#   ^^^^^^^^^^^^^^^^^^^ S106

installation
  step: Tighten the bracket
    torque bracket-bolt
`,
  right: `procedure A-1: Bracket, align

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
  step: Slacken the bracket
    loosen bracket-bolt

installation
  step: Tighten the bracket
    torque bracket-bolt
`,
});
