// S110: not chocked.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notChocked = defineDiagnostic<StateWords>({
  code: 'S110',
  name: 'not-chocked',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not chocked`,
  why: 'Chocks that were never placed cannot be taken away: the line that chocks is missing.',
  wrong: ``,
  right: ``,
});
