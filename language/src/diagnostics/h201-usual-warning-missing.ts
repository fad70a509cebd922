// H201: a grave hazard with no message before the action.
import { defineDiagnostic } from './define.js';

export interface HazardWords {
  readonly hazard: string;
  readonly signal: string;
  readonly text: string;
}

const job = (before: string) => `procedure A-1: Side sill, look at

preparation
  step: Lift the vehicle
${before}    chock rear-wheels
    raise vehicle at sill-points
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ H201
    support vehicle at sill-points

completion
  step: Lower
    lower vehicle
    unchock rear-wheels

places
  sill-points: Sill lifting points
  rear-wheels: Rear wheels
`;

export const usualWarningMissing = defineDiagnostic<HazardWords>({
  code: 'H201',
  name: 'usual-warning-missing',
  severity: 'warning',
  message: (d) => `no message before this tells of ${d.hazard}`,
  advice: (d) => `the usual one: \`${d.signal}: ${d.text}\``,
  why: `The trade puts a message before these actions because people have died at them: under a vehicle, at a loaded spring, at an airbag, at fuel, at high voltage, with brakes that had air in them. Any message before the action that names the hazard will do, once in the job.

The text the fix inserts is common practice. Local codes, the maker's data and licensed practice come first: check it against them.`,
  wrong: job(''),
  right: job('    warning: Support the vehicle on rated stands before anyone reaches under it.\n').replace(
    /#.*\n/,
    '',
  ),
});
