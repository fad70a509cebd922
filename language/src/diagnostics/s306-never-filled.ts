// S306: never filled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverFilled = defineDiagnostic<StateWords>({
  code: 'S306',
  name: 'never-filled',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} let out here and never filled again`,
  why: 'A machine handed back without its fluid fails on the first run.',
  wrong: ``,
  right: ``,
});
