// S307: level never checked.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const levelNeverChecked = defineDiagnostic<StateWords>({
  code: 'S307',
  name: 'level-never-checked',
  severity: 'error',
  message: (d) => `the level of ${d.names} is never checked after this`,
  why: 'Fluid that has been filled, bled or moved must be checked once it has settled.',
  wrong: ``,
  right: ``,
});
