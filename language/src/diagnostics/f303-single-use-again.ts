// F303: single use again.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const singleUseAgain = defineDiagnostic<StateWords>({
  code: 'F303',
  name: 'single-use-again',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} tightened a second time: single-use, fit new`,
  why: 'A single-use fastener has stretched or lost its locking the first time. Tightened again it breaks, or works loose on the road. It must be new each time, so it comes out and a new one goes in.',
  wrong: `procedure A-1: Bracket, align

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    renew
    torque 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

removal
  step: Slacken the bracket
    loosen bracket-bolt

installation
  step: Tighten the bracket
    torque bracket-bolt
#   ^^^^^^^^^^^^^^^^^^^ F303
`,
  right: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    renew
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
