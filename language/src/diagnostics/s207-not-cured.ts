// S207: not cured.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notCured = defineDiagnostic<StateWords>({
  code: 'S207',
  name: 'not-cured',
  severity: 'error',
  message: (d) => `${d.names} must cure ${d.minutes} more before this`,
  why: 'A joint that is torqued, filled or run before its sealant has set moves and leaks. Only written waits count as curing time.',
  wrong: ``,
  right: ``,
});
