// S308: never bled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverBled = defineDiagnostic<StateWords>({
  code: 'S308',
  name: 'never-bled',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} opened here and never bled`,
  why: 'Air in the circuit: the pedal goes to the floor.',
  wrong: ``,
  right: ``,
});
