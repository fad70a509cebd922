// S113: vehicle posture.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const vehiclePosture = defineDiagnostic<StateWords>({
  code: 'S113',
  name: 'vehicle-posture',
  severity: 'error',
  message: (d) => `the vehicle is ${d.posture} here`,
  why: 'Raising, supporting and lowering follow each other. A step out of turn leaves someone under a vehicle that nothing holds, or on a lift that is down.',
  wrong: ``,
  right: ``,
});
