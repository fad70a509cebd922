// S105: still connected.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillConnected = defineDiagnostic<StateWords>({
  code: 'S105',
  name: 'still-connected',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectIs} taken off while ${d.names} ${d.are} still connected`,
  why: 'A part that comes off with its hose or lead connected hangs from it. A stretched brake hose or a torn lead fails later, on the road. Disconnect it first, or hang the part in the next line (`hang`).',
  wrong: `procedure A-2: Rear lamp, refit

parts
  lamp: Rear lamp
    held by lamp-clip

fasteners
  lamp-clip: Lamp clips
    2 of clip

connections
  lamp-lead: Lamp lead
    on lamp

removal
  step: Take the lamp off
    remove lamp-clip, lamp
#   ^^^^^^^^^^^^^^^^^^^^^^ S105
    disconnect lamp-lead

installation
  step: Fit the lamp
    install lamp, lamp-clip
    connect lamp-lead
`,
  right: `procedure A-2: Rear lamp, refit

parts
  lamp: Rear lamp
    held by lamp-clip

fasteners
  lamp-clip: Lamp clips
    2 of clip

connections
  lamp-lead: Lamp lead
    on lamp

removal
  step: Take the lamp off
    remove lamp-clip
    disconnect lamp-lead
    remove lamp

installation
  step: Fit the lamp
    install lamp, lamp-clip
    connect lamp-lead
`,
});
