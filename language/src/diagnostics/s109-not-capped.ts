// S109: not capped.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notCapped = defineDiagnostic<StateWords>({
  code: 'S109',
  name: 'not-capped',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not capped`,
  why: 'Only an open line that was capped can be uncapped. If the cap line is missing, the line stood open: dirt and moisture went in and fluid ran out.',
  wrong: `procedure A-4: Washer hose, refit

connections
  washer-hose: Washer hose

removal
  step: Open the hose
    disconnect washer-hose

installation
  step: Join the hose
    uncap washer-hose
#   ^^^^^^^^^^^^^^^^^ S109
    connect washer-hose
`,
  right: `procedure A-4: Washer hose, refit

connections
  washer-hose: Washer hose

removal
  step: Open the hose
    disconnect washer-hose
    cap washer-hose

installation
  step: Join the hose
    uncap washer-hose
    connect washer-hose
`,
});
