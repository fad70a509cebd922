// S209: nothing to check.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const nothingToCheck = defineDiagnostic<StateWords>({
  code: 'S209',
  name: 'nothing-to-check',
  severity: 'error',
  message: (d) => `there is no ${d.names} in it`,
  why: 'A level can be read, a circuit bled only when fluid is in it.',
  wrong: ``,
  right: ``,
});
