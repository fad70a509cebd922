// A guard that holds on no combination.
import { defineDiagnostic } from './define.js';

export const guardNeverHolds = defineDiagnostic<{ readonly guard: string }>({
  code: 'V104',
  name: 'guard-never-holds',
  severity: 'warning',
  message: ({ guard }) => `${guard} never holds here`,
  advice: () => 'take it out, or correct the condition',
  why: `No vehicle that the procedure is for meets this condition where it stands, so what depends on it is never done nor printed.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Axle bolts, tighten

use "../catalogue/van.bay"

applies to van

fasteners
  axle-bolt: Axle bolts
    4 of M10x1.5, class 10.9, hex 16 mm
    torque 55 N·m, per "HL-1"

installation
  step: Tighten the bolts
    torque axle-bolt
    when axle light
      clean axle-bolt, when axle heavy
#                           ^^^^^^^^^^ V104
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

installation
  step: Tighten the bolts
    torque axle-bolt
    when axle light
      clean axle-bolt
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
