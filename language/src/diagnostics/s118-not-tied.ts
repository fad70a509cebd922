// S118: not tied.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notTied = defineDiagnostic<StateWords>({
  code: 'S118',
  name: 'not-tied',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not tied`,
  why: 'What was never tied cannot be untied: the line that ties it is missing, and it hung in the way or on its own weight during the job.',
  wrong: `procedure A-6: Strut, look over

connections
  sensor-lead: Sensor lead

removal
  step: Clear the strut
    disconnect sensor-lead

installation
  step: Close up
    untie sensor-lead
#   ^^^^^^^^^^^^^^^^^ S118
    connect sensor-lead
`,
  right: `procedure A-6: Strut, look over

connections
  sensor-lead: Sensor lead

removal
  step: Clear the strut
    disconnect sensor-lead
    tie sensor-lead

installation
  step: Close up
    untie sensor-lead
    connect sensor-lead
`,
});
