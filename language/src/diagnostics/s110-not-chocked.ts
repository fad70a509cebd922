// S110: not chocked.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notChocked = defineDiagnostic<StateWords>({
  code: 'S110',
  name: 'not-chocked',
  severity: 'error',
  message: (d) => `no chocks at ${d.names} to take away`,
  why: 'Chocks that were never placed cannot be taken away: the line that chocks is missing, and the vehicle stood free during the job.',
  wrong: `procedure A-5: Gearbox, look over

conditions
  selector: Gear selector
    park, neutral

places
  rear-wheels: Rear wheels

preparation
  step: Make the vehicle safe
    set selector neutral

completion
  step: Hand back
    set selector park
    unchock rear-wheels
#   ^^^^^^^^^^^^^^^^^^^ S110
`,
  right: `procedure A-5: Gearbox, look over

conditions
  selector: Gear selector
    park, neutral

places
  rear-wheels: Rear wheels

preparation
  step: Make the vehicle safe
    chock rear-wheels
    set selector neutral

completion
  step: Hand back
    set selector park
    unchock rear-wheels
`,
});
