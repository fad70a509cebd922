// A guard on an option that no vehicle of the job has.
import { defineDiagnostic } from './define.js';

export const unknownOption = defineDiagnostic<{ readonly option: string; readonly known: readonly string[] }>(
  {
    code: 'V105',
    name: 'unknown-option',
    severity: 'error',
    message: ({ option }) => `the vehicles of this procedure have no option \`${option}\``,
    advice: ({ known }) => (known.length === 0 ? undefined : `known are ${known.join(', ')}`),
    why: `A condition on an option that the vehicle's entry does not list cannot be decided: the line would be done on all of them or on none.`,
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
    torque axle-bolt, when axel heavy
#                          ^^^^ V105
    torque axle-bolt, when axle light
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
    torque axle-bolt, when axle heavy
    torque axle-bolt, when axle light
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
  },
);
