// S115: renewed in place.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const renewedInPlace = defineDiagnostic<StateWords>({
  code: 'S115',
  name: 'renewed-in-place',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} renewed while still on`,
  why: 'A thing is renewed when it is off. If it never comes off, the new one stays in its box.',
  wrong: ``,
  right: ``,
});
