// A guard on a value that an option does not have.
import { defineDiagnostic } from './define.js';

export const unknownOptionValue = defineDiagnostic<{
  readonly option: string;
  readonly value: string;
  readonly known: readonly string[];
}>({
  code: 'V106',
  name: 'unknown-option-value',
  severity: 'error',
  message: ({ option, value }) => `\`${option}\` is never \`${value}\``,
  advice: ({ known }) => `it is ${known.join(' or ')}`,
  why: `The values of an option stand in the vehicle's entry. One that is not among them is a slip, and the line would be left out for everybody.`,
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
    clean axle-bolt, when axle hevy
#                              ^^^^ V106
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
    clean axle-bolt, when axle heavy
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
