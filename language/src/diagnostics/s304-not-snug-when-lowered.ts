// S304: not snug when lowered.
import { defineDiagnostic } from './define.js';
import { WHEEL_RIGHT, wheelJob } from './joint-example.js';
import type { StateWords } from './state-words.js';

export const notSnugWhenLowered = defineDiagnostic<StateWords>({
  code: 'S304',
  name: 'not-snug-when-lowered',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not snug when the vehicle is lowered`,
  why: 'A vehicle that stands on a wheel with loose nuts drops off it or spoils the studs. Snug is enough to lower it; the torque may come on the ground.',
  wrong: wheelJob(
    ['install wheel, wheel-nut'],
    ['lower vehicle', '#   ^^^^^^^^^^^^^ S304', 'torque wheel-nut'],
  ),
  right: WHEEL_RIGHT,
});
