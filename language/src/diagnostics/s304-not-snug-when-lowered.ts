// S304: not snug when lowered.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notSnugWhenLowered = defineDiagnostic<StateWords>({
  code: 'S304',
  name: 'not-snug-when-lowered',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not snug when the vehicle is lowered`,
  why: 'A vehicle that stands on a wheel with loose nuts drops off it or spoils the studs. Snug is enough to lower it; the torque may come on the ground.',
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

completion
  step: Lower and hand back
    lower vehicle
#   ^^^^^^^^^^^^^ S304
    torque wheel-nut
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
