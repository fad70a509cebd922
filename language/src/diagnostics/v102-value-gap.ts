// A value that some combinations lack.
import { defineDiagnostic } from './define.js';

export const valueGap = defineDiagnostic<{ readonly name: string; readonly word: string }>({
  code: 'V102',
  name: 'value-gap',
  severity: 'error',
  message: ({ name, word }) => `\`${name}\` has no ${word} for some of the vehicles`,
  advice: () => 'give the figure for those too, or one without `when` for all the rest',
  why: `The procedure is for all the vehicles it names, and on some of them the step asks for a figure that is nowhere. The technician on that vehicle takes the figure of another.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Axle bolts, tighten

use "../catalogue/van.bay"

applies to van

fasteners
  axle-bolt: Axle bolts
    4 of M10x1.5, class 10.9, hex 16 mm
    torque 55 N·m, per "HL-1", when axle light
#   ^^^^^^^^^^^^^ V102

installation
  step: Tighten the bolts
    torque axle-bolt
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
    torque 55 N·m, per "HL-1", when axle light
    torque 60 N·m, per "HL-1", when axle heavy

installation
  step: Tighten the bolts
    torque axle-bolt
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
