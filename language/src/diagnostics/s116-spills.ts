// S116: a part that closes a fluid comes off before the fluid is drained.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const spills = defineDiagnostic<StateWords>({
  code: 'S116',
  name: 'spills',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectIs} taken off with ${d.names} still in`,
  why: 'Fluid that nobody let out runs over the floor, the brakes and the technician. Drain it first, into something that holds it.',
  wrong: ``,
  right: ``,
});
