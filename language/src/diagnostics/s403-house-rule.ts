// S403: a house rule is broken.
import { defineDiagnostic } from './define.js';

export interface RuleWords {
  readonly rule: string;
  readonly title: string;
  /** What is missing, in the rule's own words. */
  readonly missing: string;
}

export const houseRule = defineDiagnostic<RuleWords>({
  code: 'S403',
  name: 'house-rule',
  severity: 'error',
  message: (d) => `house rule \`${d.rule}\` is broken: ${d.title}`,
  advice: (d) => d.missing || undefined,
  why: 'The house wrote this rule because the job went wrong without it. It holds on every path and every vehicle the procedure applies to.',
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

rules
  bracket-mark: The bracket bolts are paint-marked in the step that torques them.
    after torque bracket-bolt
    require mark it
    before step ends

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
#   ^^^^^^^^^^^^^^^^^^^ S403
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

rules
  bracket-mark: The bracket bolts are paint-marked in the step that torques them.
    after torque bracket-bolt
    require mark it
    before step ends

removal
  step: Take the bracket off
    remove bracket-bolt, bracket

installation
  step: Fit the bracket
    install bracket, bracket-bolt
    torque bracket-bolt
    mark bracket-bolt
`,
});
