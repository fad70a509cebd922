// S307: level never checked.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const levelNeverChecked = defineDiagnostic<StateWords>({
  code: 'S307',
  name: 'level-never-checked',
  severity: 'error',
  message: (d) => `the level of ${d.names} is never checked after this`,
  why: 'Fluid that has been filled, bled or moved must be checked once it has settled. Filled by the figure alone it may stand too high or too low: the walls still hold some, the lines have taken some.',
  wrong: `procedure A-6: Axle oil, change

fluids
  axle-oil: Axle oil
    SAE 75W-90, API GL-5
    drain at drain-plug
    fill at fill-plug
    fill 1.8 L, until level at fill-plug, per "S-2"
    settle 10 min

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
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S307
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
    settle 10 min

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
    wait 10 min
    check-level axle-oil
    install fill-plug
    torque fill-plug
`,
});
