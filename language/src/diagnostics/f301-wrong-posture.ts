// F301: wrong posture.
import { defineDiagnostic } from './define.js';
import { WHEEL_RIGHT, wheelJob } from './joint-example.js';
import type { StateWords } from './state-words.js';

export const wrongPosture = defineDiagnostic<StateWords>({
  code: 'F301',
  name: 'wrong-posture',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectIs} torqued ${d.posture}`,
  why: 'Rubber bushes torqued with the suspension hanging are twisted for the rest of their life and tear early. Wheel nuts torqued in the air turn the wheel instead of the nut. `on ground` and `at ride height` in the entry say how the vehicle must stand.',
  wrong: wheelJob(
    ['install wheel, wheel-nut', 'snug wheel-nut', 'torque wheel-nut', '#   ^^^^^^^^^^^^^^^^ F301'],
    ['lower vehicle'],
  ),
  right: WHEEL_RIGHT,
});
