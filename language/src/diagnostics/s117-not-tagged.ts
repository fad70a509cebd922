// S117: not tagged.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';
import { tagExample } from './tag-example.js';

export const notTagged = defineDiagnostic<StateWords>({
  code: 'S117',
  name: 'not-tagged',
  severity: 'error',
  message: (d) => `no tag on ${d.names} to take off`,
  why: 'A tag that was never hung cannot be taken off: the line that hangs it is missing, and nobody was told to leave the machine alone.',
  wrong: tagExample(
    ['    set selector neutral'],
    ['    untag vehicle', '#   ^^^^^^^^^^^^^ S117', '    set selector park'],
  ),
  right: tagExample(
    ['    tag vehicle', '    set selector neutral'],
    ['    untag vehicle', '    set selector park'],
  ),
});
