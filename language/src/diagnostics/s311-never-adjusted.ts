// S311: never adjusted.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverAdjusted = defineDiagnostic<StateWords>({
  code: 'S311',
  name: 'never-adjusted',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} upset here and never adjusted`,
  why: 'Taking the part off upset a setting that must be made again.',
  wrong: ``,
  right: ``,
});
