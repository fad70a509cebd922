// S312: left chocked.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const leftChocked = defineDiagnostic<StateWords>({
  code: 'S312',
  name: 'left-chocked',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} chocked here and the chocks never taken away`,
  why: 'A vehicle that is driven against its chocks jumps them or burns its clutch.',
  wrong: ``,
  right: ``,
});
