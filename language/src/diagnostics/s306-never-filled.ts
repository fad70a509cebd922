// S306: never filled.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverFilled = defineDiagnostic<StateWords>({
  code: 'S306',
  name: 'never-filled',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} let out here and never filled again`,
  why: 'A machine handed back without its fluid fails on the first run. What was lost by opening a part counts as let out too.',
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
#   ^^^^^^^^^^^^^^ S306

installation
  step: Put the oil in
    install drain-plug
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
