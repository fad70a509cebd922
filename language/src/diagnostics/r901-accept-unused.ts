// R901: an `accept` that silences nothing.
import { defineDiagnostic } from './define.js';

export const acceptUnused = defineDiagnostic<{ readonly code: string }>({
  code: 'R901',
  name: 'accept-unused',
  severity: 'warning',
  message: (d) => `\`accept ${d.code}\` silences nothing here`,
  advice: () => 'take it out, or move it to the line above the finding',
  tag: 'unused',
  why: 'An `accept` that outlives its finding hides the next one of that kind. It is taken out as soon as it silences nothing.',
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
    accept S103: the bolts are out
#          ^^^^ R901
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

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
`,
});
