// S114: suspension posture.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const suspensionPosture = defineDiagnostic<StateWords>({
  code: 'S114',
  name: 'suspension-posture',
  severity: 'error',
  message: (d) => `the suspension is ${d.suspension} here`,
  why: 'A jack left under an arm when the vehicle comes down, or taken away before the bolts are torqued, spoils the work or drops the vehicle.',
  wrong: ``,
  right: ``,
});
