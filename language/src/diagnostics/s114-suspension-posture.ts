// S114: suspension posture.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const suspensionPosture = defineDiagnostic<StateWords>({
  code: 'S114',
  name: 'suspension-posture',
  severity: 'error',
  message: (d) => `the suspension is ${d.suspension} here`,
  why: 'A jack left under an arm when the vehicle comes down, or taken away before the bolts are torqued, spoils the work or drops the vehicle.',
  wrong: `procedure A-7: Underside, clean

places
  rear-wheels: Rear wheels
  underside: Underside

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    chock rear-wheels
    raise vehicle
    support vehicle
    load suspension

removal
  step: Clean the underside
    clean underside

completion
  step: Hand back
    lower vehicle
#   ^^^^^^^^^^^^^ S114
    unload suspension
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
    load suspension

removal
  step: Clean the underside
    clean underside

completion
  step: Hand back
    unload suspension
    lower vehicle
    unchock rear-wheels
`,
});
