// S202: shut in.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const shutIn = defineDiagnostic<StateWords>({
  code: 'S202',
  name: 'shut-in',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} shut in behind ${d.object}`,
  why: 'A rag, cap or cover that is shut in stays in the machine: a blocked oil way, a dead engine. It is reported where the cover goes on, when there is still time to reach in.',
  wrong: `procedure A-3: Housing cover, refit

parts
  cover: Housing cover
    held by cover-clip

fasteners
  cover-clip: Cover clips
    4 of clip

temporary
  rag: Clean rag in the opening
    behind cover

removal
  step: Take the cover off
    remove cover-clip, cover
    place rag

installation
  step: Fit the cover
    install cover, cover-clip
#   ^^^^^^^^^^^^^^^^^^^^^^^^^ S202
    remove rag
`,
  right: `procedure A-3: Housing cover, refit

parts
  cover: Housing cover
    held by cover-clip

fasteners
  cover-clip: Cover clips
    4 of clip

temporary
  rag: Clean rag in the opening
    behind cover

removal
  step: Take the cover off
    remove cover-clip, cover
    place rag

installation
  step: Fit the cover
    remove rag
    install cover, cover-clip
`,
});
