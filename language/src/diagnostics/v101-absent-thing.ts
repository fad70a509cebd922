// V101: absent thing.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const absentThing = defineDiagnostic<StateWords>({
  code: 'V101',
  name: 'absent-thing',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not on every vehicle this line is for`,
  why: `On a vehicle that does not have it the line makes no sense: the technician looks for a part that was never fitted, and begins to doubt the rest. Guard the line with the same \`when\` as the entry's \`only when\`.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Axle bolts, tighten

use "../catalogue/van.bay"

applies to van

fasteners
  axle-bolt: Axle bolts
    4 of M10x1.5, class 10.9, hex 16 mm
    torque 55 N·m, per "HL-1"
    only when axle heavy

installation
  step: Tighten the bolts
    torque axle-bolt
#          ^^^^^^^^^ V101
--- file: catalogue/van.bay
catalogue: Van

sources
  HL-1: Axle sheet

vehicles
  van: Delivery van
    years 2018 to 2025
    option axle light, heavy
    option engine petrol, diesel
`,
  right: `--- file: procedures/a.bay
procedure A-1: Axle bolts, tighten

use "../catalogue/van.bay"

applies to van

fasteners
  axle-bolt: Axle bolts
    4 of M10x1.5, class 10.9, hex 16 mm
    torque 55 N·m, per "HL-1"
    only when axle heavy

installation
  step: Tighten the bolts
    torque axle-bolt, when axle heavy
--- file: catalogue/van.bay
catalogue: Van

sources
  HL-1: Axle sheet

vehicles
  van: Delivery van
    years 2018 to 2025
    option axle light, heavy
    option engine petrol, diesel
`,
});
