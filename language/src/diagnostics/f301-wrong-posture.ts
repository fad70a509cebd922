// F301: wrong posture.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const wrongPosture = defineDiagnostic<StateWords>({
  code: 'F301',
  name: 'wrong-posture',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectAre} torqued ${d.posture}`,
  why: 'Rubber bushes torqued with the suspension hanging are twisted for the rest of their life and tear early. Wheel nuts torqued in the air turn the wheel instead of the nut. `on ground` and `at ride height` in the entry say how the vehicle must stand.',
  wrong: `procedure A-9: Front wheel, change sides

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 160 N·m, on ground, per "S-3"

places
  rear-wheels: Rear wheels

sources
  S-3: Wheel sheet, issue 1

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    chock rear-wheels
    loosen wheel-nut, 1/2 turn
    raise vehicle
    support vehicle

removal
  step: Take the wheel off
    remove wheel-nut, wheel

installation
  step: Fit the wheel
    install wheel, wheel-nut
    snug wheel-nut
    torque wheel-nut
#   ^^^^^^^^^^^^^^^^ F301

completion
  step: Lower and hand back
    lower vehicle
    unchock rear-wheels
    recheck wheel-nut, after 80 km
`,
  right: `procedure A-9: Front wheel, change sides

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 160 N·m, on ground, per "S-3"

places
  rear-wheels: Rear wheels

sources
  S-3: Wheel sheet, issue 1

preparation
  step: Raise the vehicle
    warning: A vehicle that falls can kill. Nobody goes under it before the stands carry it.
    chock rear-wheels
    loosen wheel-nut, 1/2 turn
    raise vehicle
    support vehicle

removal
  step: Take the wheel off
    remove wheel-nut, wheel

installation
  step: Fit the wheel
    install wheel, wheel-nut
    snug wheel-nut

completion
  step: Lower and hand back
    lower vehicle
    torque wheel-nut
    unchock rear-wheels
    recheck wheel-nut, after 80 km
`,
});
