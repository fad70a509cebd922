// S314: left tagged.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';
import { tagExample } from './tag-example.js';

export const leftTagged = defineDiagnostic<StateWords>({
  code: 'S314',
  name: 'left-tagged',
  severity: 'error',
  message: (d) => `the tag on ${d.names} is never taken off after this`,
  why: 'A tag says that the machine must not be used. Left on, it keeps a good machine standing, or teaches people not to mind tags.',
  wrong: tagExample(
    ['    tag vehicle', '#   ^^^^^^^^^^^ S314', '    set selector neutral'],
    ['    set selector park'],
  ),
  right: tagExample(
    ['    tag vehicle', '    set selector neutral'],
    ['    set selector park', '    untag vehicle'],
  ),
});
