// S117: not tagged.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notTagged = defineDiagnostic<StateWords>({
  code: 'S117',
  name: 'not-tagged',
  severity: 'error',
  message: (d) => `no tag on ${d.names} to take off`,
  why: 'A tag that was never hung cannot be taken off: the line that hangs it is missing, and nobody was told to leave the machine alone.',
  wrong: `procedure A-5: Gearbox, look over

conditions
  selector: Gear selector
    park, neutral

preparation
  step: Make the vehicle safe
    set selector neutral

completion
  step: Hand back
    untag vehicle
#   ^^^^^^^^^^^^^ S117
    set selector park
`,
  right: `procedure A-5: Gearbox, look over

conditions
  selector: Gear selector
    park, neutral

preparation
  step: Make the vehicle safe
    tag vehicle
    set selector neutral

completion
  step: Hand back
    untag vehicle
    set selector park
`,
});
