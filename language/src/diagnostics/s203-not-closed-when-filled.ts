// S203: not closed when filled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notClosedWhenFilled = defineDiagnostic<StateWords>({
  code: 'S203',
  name: 'not-closed-when-filled',
  severity: 'error',
  message: (d) => `${d.object} goes in while ${d.names} ${d.are} not ${d.wanted}`,
  why: 'Fluid that goes in before the drain, cover or line is shut and torqued runs out on the floor, or pushes fresh sealant out.',
  wrong: ``,
  right: ``,
});
