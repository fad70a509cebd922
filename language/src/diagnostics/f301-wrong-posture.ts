// F301: wrong posture.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const wrongPosture = defineDiagnostic<StateWords>({
  code: 'F301',
  name: 'wrong-posture',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectAre} torqued ${d.posture}`,
  why: 'Bushes and wheels torqued in the wrong posture are twisted or loose for the rest of their life.',
  wrong: ``,
  right: ``,
});
