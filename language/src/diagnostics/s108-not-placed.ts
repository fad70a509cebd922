// S108: not placed.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notPlaced = defineDiagnostic<StateWords>({
  code: 'S108',
  name: 'not-placed',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not in place`,
  why: 'A thing that was never placed cannot be used or taken away.',
  wrong: ``,
  right: ``,
});
