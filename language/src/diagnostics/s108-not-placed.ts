// S108: not placed.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notPlaced = defineDiagnostic<StateWords>({
  code: 'S108',
  name: 'not-placed',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not in place`,
  why: 'A thing that was never placed cannot be used or taken away. The line that places it is missing, so the technician may have gone without it.',
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

installation
  step: Fit the cover
    remove rag
#   ^^^^^^^^^^ S108
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
