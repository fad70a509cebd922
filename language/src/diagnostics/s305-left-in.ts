// S305: left in.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const leftIn = defineDiagnostic<StateWords>({
  code: 'S305',
  name: 'left-in',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} placed here and never taken away`,
  why: 'Rags, caps, pans, stands: what is placed for the job must be gone at its end. What stays behind is found by an engine, a brake or the next customer.',
  wrong: `procedure A-3: Housing cover, refit

parts
  cover: Housing cover
    held by cover-clip

fasteners
  cover-clip: Cover clips
    4 of clip

temporary
  drip-tray: Drip tray under the housing

removal
  step: Take the cover off
    remove cover-clip, cover
    place drip-tray
#   ^^^^^^^^^^^^^^^ S305

installation
  step: Fit the cover
    install cover, cover-clip
`,
  right: `procedure A-3: Housing cover, refit

parts
  cover: Housing cover
    held by cover-clip

fasteners
  cover-clip: Cover clips
    4 of clip

temporary
  drip-tray: Drip tray under the housing

removal
  step: Take the cover off
    remove cover-clip, cover
    place drip-tray

installation
  step: Fit the cover
    install cover, cover-clip
    remove drip-tray
`,
});
