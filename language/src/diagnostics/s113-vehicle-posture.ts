// S113: vehicle posture.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const vehiclePosture = defineDiagnostic<StateWords>({
  code: 'S113',
  name: 'vehicle-posture',
  severity: 'error',
  message: (d) => `the vehicle is ${d.posture}`,
  why: 'Raising, supporting and lowering follow each other. A step out of turn leaves someone under a vehicle that nothing holds, or on a lift that is down.',
  wrong: `procedure A-7: Underside, clean

places
  rear-wheels: Rear wheels
  underside: Underside

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    chock rear-wheels
    support vehicle
#   ^^^^^^^^^^^^^^^ S113
    raise vehicle

removal
  step: Clean the underside
    clean underside

completion
  step: Hand back
    lower vehicle
    unchock rear-wheels
`,
  right: `procedure A-7: Underside, clean

places
  rear-wheels: Rear wheels
  underside: Underside

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    chock rear-wheels
    raise vehicle
    support vehicle

removal
  step: Clean the underside
    clean underside

completion
  step: Hand back
    lower vehicle
    unchock rear-wheels
`,
});
