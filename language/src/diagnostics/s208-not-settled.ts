// S208: not settled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notSettled = defineDiagnostic<StateWords>({
  code: 'S208',
  name: 'not-settled',
  severity: 'error',
  message: (d) => `${d.names} must settle ${d.minutes} more before the level is read`,
  why: 'Fluid that still runs down from the walls shows too low a level; the machine is then filled too far.',
  wrong: ``,
  right: ``,
});
