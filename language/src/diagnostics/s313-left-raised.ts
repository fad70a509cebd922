// S313: left raised.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const leftRaised = defineDiagnostic<StateWords>({
  code: 'S313',
  name: 'left-raised',
  severity: 'error',
  message: () => `the vehicle is never lowered after this`,
  why: 'The procedure ends with the vehicle in the air. The next person finds it so, with no line that says whether its wheels are tight.',
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
#   ^^^^^^^^^^^^^^^ S313

removal
  step: Clean the underside
    clean underside

completion
  step: Hand back
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
