// S107: already placed.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const alreadyPlaced = defineDiagnostic<StateWords>({
  code: 'S107',
  name: 'already-placed',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} already in place`,
  why: 'Placing the same thing twice says that it was never taken away in between.',
  wrong: ``,
  right: ``,
});
