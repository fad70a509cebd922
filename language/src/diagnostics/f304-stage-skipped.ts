// F304: a torque stage before its turn.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stageSkipped = defineDiagnostic<StateWords>({
  code: 'F304',
  name: 'stage-skipped',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} torqued before the stage below`,
  why: 'Stages bring a joint down evenly: every fastener to the first stage in the order, then the next. A stage left out clamps one side before the other.',
  wrong: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 10 N·m then 25 N·m, per "S-1"

sources
  S-1: Bracket sheet, issue 1

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt, stage 2
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ F304
`,
  right: `procedure A-1: Bracket, refit

parts
  bracket: Bracket
    held by bracket-bolt

fasteners
  bracket-bolt: Bracket bolts
    2 of M8x1.25, class 8.8, hex 13 mm
    torque 10 N·m then 25 N·m, per "S-1"

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
