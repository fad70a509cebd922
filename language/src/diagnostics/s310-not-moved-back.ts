// S310: not moved back.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notMovedBack = defineDiagnostic<StateWords>({
  code: 'S310',
  name: 'not-moved-back',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} moved here and never moved back to ${d.value}`,
  why: 'A part left in its working position does not do its job.',
  wrong: ``,
  right: ``,
});
