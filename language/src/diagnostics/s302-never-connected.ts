// S302: never connected.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverConnected = defineDiagnostic<StateWords>({
  code: 'S302',
  name: 'never-connected',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} disconnected here and never connected again`,
  why: 'A lead or hose left off is a come-back, a warning lamp or a leak. Plugs are forgotten more often than bolts: they are small and out of sight.',
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
    remove lamp-clip
    disconnect lamp-lead
#   ^^^^^^^^^^^^^^^^^^^^ S302
    remove lamp

installation
  step: Fit the lamp
    install lamp, lamp-clip
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
