// S402: never reached.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverReached = defineDiagnostic<StateWords>({
  code: 'S402',
  name: 'never-reached',
  severity: 'error',
  message: () => `no path comes here`,
  why: 'A step that no vehicle and no test result reaches is printed for nobody.',
  wrong: ``,
  right: ``,
});
