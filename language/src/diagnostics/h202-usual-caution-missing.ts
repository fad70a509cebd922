// H202: a hazard with no message before the action.
import { defineDiagnostic } from './define.js';
import type { HazardWords } from './h201-usual-warning-missing.js';
import { oilJob } from './oil-example.js';

const job = oilJob(
  ['SAE 75W-90', 'fill 1.9 L, until level at fill-plug, per "S-1"'],
  ['drain axle-oil', '#   ^^^^^^^^^^^^^^ H202'],
  ['fill axle-oil'],
);

export const usualCautionMissing = defineDiagnostic<HazardWords>({
  code: 'H202',
  name: 'usual-caution-missing',
  severity: 'hint',
  message: (d) => `no message before this tells of ${d.hazard}`,
  advice: (d) => `the usual one: \`${d.signal}: ${d.text}\``,
  why: `Burns, acid, frostbite, dust in the lungs: the trade puts a message before these actions. Any message before the action that names the hazard will do, once in the job, and so will a prerequisite that takes the hazard away.

The text the fix inserts is common practice. Local codes, the maker's data and licensed practice come first: check it against them.`,
  wrong: job.replace('    caution: Axle oil can burn. Let it cool.\n', ''),
  right: job.replace(/#.*\n/, ''),
});
