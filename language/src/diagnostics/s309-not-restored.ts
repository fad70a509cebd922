// S309: not restored.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notRestored = defineDiagnostic<StateWords>({
  code: 'S309',
  name: 'not-restored',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} set here and never put back to \`${d.value}\``,
  why: 'The vehicle is handed back as it came: selector, brake, ignition. Who drives it next does not expect the selector in neutral on a slope.',
  wrong: `procedure A-5: Gearbox, look over

conditions
  selector: Gear selector
    park, neutral

places
  rear-wheels: Rear wheels

preparation
  step: Make the vehicle safe
    chock rear-wheels
    set selector neutral
#   ^^^^^^^^^^^^^^^^^^^^ S309

completion
  step: Hand back
    unchock rear-wheels
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
