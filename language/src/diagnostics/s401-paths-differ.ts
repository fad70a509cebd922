// S401: paths differ.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const pathsDiffer = defineDiagnostic<StateWords>({
  code: 'S401',
  name: 'paths-differ',
  severity: 'error',
  message: (d) => `the paths of this test do not come back together: ${d.names}`,
  why: 'What is on, off or torqued behind an `if` must not depend on which way the technician went, unless that way ends in `stop`.',
  wrong: ``,
  right: ``,
});
