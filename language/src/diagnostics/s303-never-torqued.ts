// S303: never torqued.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverTorqued = defineDiagnostic<StateWords>({
  code: 'S303',
  name: 'never-torqued',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} left untorqued here`,
  why: 'A fastener that was fitted or loosened must be torqued. The next person cannot see that it is only hand tight.',
  wrong: ``,
  right: ``,
});
