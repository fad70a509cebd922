// S116: a part that closes a fluid comes off before the fluid is drained.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const spills = defineDiagnostic<StateWords>({
  code: 'S116',
  name: 'spills',
  severity: 'error',
  message: (d) => `${d.object} ${d.objectIs} taken off with ${d.names} still in`,
  why: 'Fluid that nobody let out runs over the floor, the brakes and the technician, hot where the engine has run. Drain it first, into something that holds it.',
  wrong: `procedure A-6: Axle cover, refit

fluids
  axle-oil: Axle oil
    SAE 75W-90, API GL-5
    drain at cover
    fill at fill-plug
    fill 1.8 L, until level at fill-plug, per "S-2"

parts
  cover: Axle cover with its gasket
    held by cover-bolt

fasteners
  cover-bolt: Cover bolts
    8 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "S-2"
  fill-plug: Fill plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-2"

sources
  S-2: Axle sheet, issue 2

removal
  step: Let the oil out
    caution: Hot oil burns. Let the axle cool first.
    remove fill-plug
    remove cover-bolt, cover
#   ^^^^^^^^^^^^^^^^^^^^^^^^ S116

installation
  step: Put the oil in
    install cover, cover-bolt
    torque cover-bolt
    fill axle-oil, 1.8 L, until level at fill-plug
    install fill-plug
    torque fill-plug
`,
  right: `procedure A-6: Axle cover, refit

fluids
  axle-oil: Axle oil
    SAE 75W-90, API GL-5
    drain at cover
    fill at fill-plug
    fill 1.8 L, until level at fill-plug, per "S-2"

parts
  cover: Axle cover with its gasket
    held by cover-bolt

fasteners
  cover-bolt: Cover bolts
    8 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "S-2"
  fill-plug: Fill plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-2"

sources
  S-2: Axle sheet, issue 2

removal
  step: Let the oil out
    caution: Hot oil burns. Let the axle cool first.
    remove fill-plug
    loosen cover-bolt
    drain axle-oil
    remove cover-bolt, cover

installation
  step: Put the oil in
    install cover, cover-bolt
    torque cover-bolt
    fill axle-oil, 1.8 L, until level at fill-plug
    install fill-plug
    torque fill-plug
`,
});
