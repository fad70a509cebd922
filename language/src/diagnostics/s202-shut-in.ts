// S202: shut in.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const shutIn = defineDiagnostic<StateWords>({
  code: 'S202',
  name: 'shut-in',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} shut in behind ${d.object}`,
  why: 'A rag, cap or cover that is shut in stays in the machine: a blocked oil way, a dead engine.',
  wrong: ``,
  right: ``,
});
