// S109: not capped.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notCapped = defineDiagnostic<StateWords>({
  code: 'S109',
  name: 'not-capped',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not capped`,
  why: 'Only an open line that was capped can be uncapped.',
  wrong: ``,
  right: ``,
});
