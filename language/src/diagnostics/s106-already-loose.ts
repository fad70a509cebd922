// S106: already loose.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const alreadyLoose = defineDiagnostic<StateWords>({
  code: 'S106',
  name: 'already-loose',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} already loose`,
  why: 'Loosening what is already loose says that a line is missing or stands twice.',
  wrong: ``,
  right: ``,
});
