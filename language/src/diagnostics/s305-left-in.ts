// S305: left in.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const leftIn = defineDiagnostic<StateWords>({
  code: 'S305',
  name: 'left-in',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} placed here and never taken away`,
  why: 'Rags, caps, pans, stands: what is placed for the job must be gone at its end.',
  wrong: ``,
  right: ``,
});
