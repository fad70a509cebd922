// S312: left chocked.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const leftChocked = defineDiagnostic<StateWords>({
  code: 'S312',
  name: 'left-chocked',
  severity: 'error',
  message: (d) => `the chocks at ${d.names} are never taken away after this`,
  why: 'A vehicle that is driven against its chocks jumps them or burns its clutch.',
  wrong: `procedure A-5: Gearbox, look over

conditions
  selector: Gear selector
    park, neutral

places
  rear-wheels: Rear wheels

preparation
  step: Make the vehicle safe
    chock rear-wheels
#   ^^^^^^^^^^^^^^^^^ S312
    set selector neutral

completion
  step: Hand back
    set selector park
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
