// S111: drain shut.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const drainShut = defineDiagnostic<StateWords>({
  code: 'S111',
  name: 'drain-shut',
  severity: 'error',
  message: (d) => `${d.object} cannot drain: ${d.names} ${d.are} still tight`,
  why: 'Fluid runs out only where something is open.',
  wrong: ``,
  right: ``,
});
