// S311: never adjusted.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverAdjusted = defineDiagnostic<StateWords>({
  code: 'S311',
  name: 'never-adjusted',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} upset here and never adjusted`,
  why: 'Taking a part off can upset a setting that must be made again: toe after a tie rod, clearance after a shoe. The vehicle drives, and wears its tyres in a month.',
  wrong: `procedure A-12: Tie rod, refit

parts
  tie-rod: Tie rod end
    held by tie-rod-nut

fasteners
  tie-rod-nut: Tie rod nut
    1 of M12x1.5, class 8, hex 18 mm
    torque 50 N·m, per "S-5"

adjustments
  toe: Front toe
    disturbed by tie-rod

sources
  S-5: Steering sheet, issue 1

removal
  step: Take the tie rod off
    remove tie-rod-nut, tie-rod
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^ S311

installation
  step: Fit the tie rod
    install tie-rod, tie-rod-nut
    torque tie-rod-nut
`,
  right: `procedure A-12: Tie rod, refit

parts
  tie-rod: Tie rod end
    held by tie-rod-nut

fasteners
  tie-rod-nut: Tie rod nut
    1 of M12x1.5, class 8, hex 18 mm
    torque 50 N·m, per "S-5"

adjustments
  toe: Front toe
    disturbed by tie-rod

sources
  S-5: Steering sheet, issue 1

removal
  step: Take the tie rod off
    remove tie-rod-nut, tie-rod

installation
  step: Fit the tie rod
    install tie-rod, tie-rod-nut
    torque tie-rod-nut
    adjust toe
`,
});
