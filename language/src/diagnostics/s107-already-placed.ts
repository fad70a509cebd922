// S107: already placed.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const alreadyPlaced = defineDiagnostic<StateWords>({
  code: 'S107',
  name: 'already-placed',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} already ${d.placed}`,
  why: 'Placing the same thing twice says that it was never taken away in between, or that a second one goes in that nobody counts out again.',
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
    place rag
#   ^^^^^^^^^ S107

installation
  step: Fit the cover
    remove rag
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
