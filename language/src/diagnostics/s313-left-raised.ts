// S313: left raised.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const leftRaised = defineDiagnostic<StateWords>({
  code: 'S313',
  name: 'left-raised',
  severity: 'error',
  message: () => `the vehicle is raised here and never lowered`,
  why: 'The procedure ends with the vehicle in the air.',
  wrong: ``,
  right: ``,
});
