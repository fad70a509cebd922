// S203: not closed when filled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notClosedWhenFilled = defineDiagnostic<StateWords>({
  code: 'S203',
  name: 'not-closed-when-filled',
  severity: 'error',
  message: (d) => `${d.object} goes in while ${d.names} ${d.are} not ${d.wanted}`,
  why: 'Fluid that goes in before the drain, cover or line is shut and torqued runs out on the floor, or pushes fresh sealant out.',
  wrong: `procedure A-6: Axle oil, change

fluids
  axle-oil: Axle oil
    SAE 75W-90, API GL-5
    drain at drain-plug
    fill at fill-plug
    fill 1.8 L, until level at fill-plug, per "S-2"

fasteners
  drain-plug: Drain plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-2"
  fill-plug: Fill plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-2"

sources
  S-2: Axle sheet, issue 2

removal
  step: Let the oil out
    caution: Hot oil burns. Let the axle cool first.
    remove fill-plug, drain-plug
    drain axle-oil

installation
  step: Put the oil in
    install drain-plug
    fill axle-oil, 1.8 L, until level at fill-plug
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S203
    torque drain-plug
    install fill-plug
    torque fill-plug
`,
  right: `procedure A-6: Axle oil, change

fluids
  axle-oil: Axle oil
    SAE 75W-90, API GL-5
    drain at drain-plug
    fill at fill-plug
    fill 1.8 L, until level at fill-plug, per "S-2"

fasteners
  drain-plug: Drain plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-2"
  fill-plug: Fill plug
    1 of M18x1.5, hex 24 mm
    torque 40 N·m, per "S-2"

sources
  S-2: Axle sheet, issue 2

removal
  step: Let the oil out
    caution: Hot oil burns. Let the axle cool first.
    remove fill-plug, drain-plug
    drain axle-oil

installation
  step: Put the oil in
    install drain-plug
    torque drain-plug
    fill axle-oil, 1.8 L, until level at fill-plug
    install fill-plug
    torque fill-plug
`,
});
