// S104: still covered.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillCovered = defineDiagnostic<StateWords>({
  code: 'S104',
  name: 'still-covered',
  severity: 'error',
  message: (d) => `${d.object} cannot be reached: ${d.names} ${d.are} still on`,
  why: 'The technician cannot get a hand or a tool to it while what covers it is on.',
  wrong: ``,
  right: ``,
});
