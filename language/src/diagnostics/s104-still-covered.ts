// S104: still covered.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillCovered = defineDiagnostic<StateWords>({
  code: 'S104',
  name: 'still-covered',
  severity: 'error',
  message: (d) => `${d.object} cannot be reached: ${d.names} ${d.are} still on`,
  why: 'The technician cannot get a hand or a tool to it while what covers it (`behind`) is on. A line that cannot be done in its place is skipped, or done by force.',
  wrong: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt
    behind tray
  tray: Undertray
    held by tray-clip

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"
    behind tray
  tray-clip: Tray clips
    6 of clip

sources
  S-1: Bracket sheet, issue 1

removal
  step: Take the bracket off
    remove bracket-bolt, bracket
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S104
    remove tray-clip, tray

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
    install tray, tray-clip
`,
  right: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt
    behind tray
  tray: Undertray
    held by tray-clip

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m, per "S-1"
    behind tray
  tray-clip: Tray clips
    6 of clip

sources
  S-1: Bracket sheet, issue 1

removal
  step: Take the bracket off
    remove tray-clip, tray
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
    install tray, tray-clip
`,
});
