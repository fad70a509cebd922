// S309: not restored.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notRestored = defineDiagnostic<StateWords>({
  code: 'S309',
  name: 'not-restored',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} set here and never put back to ${d.value}`,
  why: 'The vehicle is handed back as it came: selector, brake, ignition.',
  wrong: ``,
  right: ``,
});
