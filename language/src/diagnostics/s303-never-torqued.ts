// S303: never torqued.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverTorqued = defineDiagnostic<StateWords>({
  code: 'S303',
  name: 'never-torqued',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} never ${d.wanted} after this`,
  why: 'A fastener that was fitted or loosened must be torqued before the vehicle leaves. The next person cannot see that it is only hand tight.',
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
    install bracket, bracket-bolt
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S303
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
