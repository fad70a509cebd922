// F302: angle before snug.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const angleBeforeSnug = defineDiagnostic<StateWords>({
  code: 'F302',
  name: 'angle-before-snug',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} turned by an angle from a loose joint`,
  why: 'An angle counts from a joint that is already drawn together by the stage before it. From a loose one the same turn may give any clamp force at all, or none.',
  wrong: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm, length 80 mm, grip 70 mm
    renew
    torque 15 N·m then 90°, per "S-1"

sources
  S-1: Bracket sheet, issue 1

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt, stage 2
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ F302
`,
  right: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm, length 80 mm, grip 70 mm
    renew
    torque 15 N·m then 90°, per "S-1"

sources
  S-1: Bracket sheet, issue 1

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt, stage 1
    torque bracket-bolt, stage 2
`,
});
