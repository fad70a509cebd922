// S101: taken off twice.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const takenOffTwice = defineDiagnostic<StateWords>({
  code: 'S101',
  name: 'taken-off-twice',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} already ${d.off}`,
  why: `A line that takes off what is already off is a copy left over, or the line that puts it back is missing before it. The technician stops and looks for a part that is not there.

With a count (\`remove 2 of cover-bolt\`) it says that fewer are left than named.`,
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
    remove bracket-bolt, bracket
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S101

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
