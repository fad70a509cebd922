// S103: still held.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillHeld = defineDiagnostic<StateWords>({
  code: 'S103',
  name: 'still-held',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectIs} still held by ${d.names}`,
  why: 'A part that is pulled while something still holds it bends, breaks or drops. Everything that holds it comes off first, and what clamps it is loosened.',
  wrong: ``,
  right: ``,
});
