// S301: never put back.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverPutBack = defineDiagnostic<StateWords>({
  code: 'S301',
  name: 'never-put-back',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} taken off here and never put back`,
  why: 'What comes off must go back on, on every vehicle the procedure applies to. The technician ends with a part on the bench.',
  wrong: ``,
  right: ``,
});
