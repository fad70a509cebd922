// Two values for one combination.
import { defineDiagnostic } from './define.js';

export const twoValues = defineDiagnostic<{ readonly name: string; readonly word: string }>({
  code: 'V103',
  name: 'value-twice',
  severity: 'error',
  message: ({ name, word }) => `\`${name}\` has two lines for its ${word}`,
  advice: () => 'take one out, or say with `when` which vehicles it is for',
  why: `Two figures that hold for the same vehicle leave the choice to whoever reads it. One is left over from an earlier revision, or each needs its \`when\`.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Axle bolts, tighten

use "../catalogue/van.bay"

applies to van

fasteners
  axle-bolt: Axle bolts
    4 of M10x1.5, class 10.9, hex 16 mm
    torque 55 N·m, per "HL-1"
    torque 60 N·m, per "HL-1"
#   ^^^^^^^^^^^^^ V103

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
    torque 55 N·m, per "HL-1"
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
