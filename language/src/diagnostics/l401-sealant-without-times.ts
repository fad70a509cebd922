// L401: a sealant with none of its times.
import { defineDiagnostic } from './define.js';

const catalogue = (lines: string) => `catalogue: Sealants

supplies
  cover-sealant: Cover sealant
${lines}
`;

export const sealantWithoutTimes = defineDiagnostic<{ readonly name: string }>({
  code: 'L401',
  name: 'sealant-without-times',
  severity: 'question',
  message: (d) => `how long must \`${d.name}\` cure?`,
  advice: () =>
    'its sheet gives them: `fit within`, `torque after`, `fill after`, `run after`; usual for silicone: within 10 min, fill after 2 h, run after 24 h',
  why: `A sealed joint that is filled or run before its cure leaks, and the whole job is done again. With the times written, the checker watches that the waits are there, and the guide prints the clock.`,
  wrong: catalogue('# ^^^^^^^^^^^^^ L401\n    sealant'),
  right: catalogue('    sealant\n    fit within 10 min, fill after 2 h, run after 24 h'),
});
