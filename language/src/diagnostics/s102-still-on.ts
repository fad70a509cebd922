// S102: still on.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillOn = defineDiagnostic<StateWords>({
  code: 'S102',
  name: 'still-on',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} still on`,
  why: 'A thing can only be put on after it has come off. Either the line that takes it off is missing, or it stands further down.',
  wrong: ``,
  right: ``,
});
