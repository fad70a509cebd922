// S201: out of order.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const outOfOrder = defineDiagnostic<StateWords>({
  code: 'S201',
  name: 'out-of-order',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} ${d.wanted} only later, and needed here`,
  why: 'The work cannot be done in the order written: this line needs what a later line does.',
  wrong: ``,
  right: ``,
});
