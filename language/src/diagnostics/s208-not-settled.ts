// S208: not settled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notSettled = defineDiagnostic<StateWords>({
  code: 'S208',
  name: 'not-settled',
  severity: 'error',
  message: (d) => `${d.names} must settle ${d.minutes} more before the level is read`,
  why: 'Fluid that still runs down from the walls shows too low a level; the machine is then filled too far.',
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
    check-level axle-oil
#   ^^^^^^^^^^^^^^^^^^^^ S208
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
