// S112: filler shut.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const fillerShut = defineDiagnostic<StateWords>({
  code: 'S112',
  name: 'filler-shut',
  severity: 'error',
  message: (d) => `${d.object} cannot be filled or checked: ${d.names} ${d.are} still on`,
  why: 'The filler must be open before fluid goes in or its level is read. It also proves, before anything is drained, that the filler comes out at all.',
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
    remove drain-plug
    drain axle-oil

installation
  step: Put the oil in
    install drain-plug
    torque drain-plug
    fill axle-oil, 1.8 L, until level at fill-plug
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S112
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
