// A vehicle that nothing declares.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const unknownVehicle = defineDiagnostic<{
  readonly name: string;
  readonly kind: string | undefined;
  readonly near: readonly string[];
}>({
  code: 'N306',
  name: 'unknown-vehicle',
  severity: 'error',
  message: ({ name, kind }) =>
    kind === undefined ? `there is no vehicle \`${name}\`` : `\`${name}\` is ${kind}, not a vehicle`,
  advice: ({ near }) => didYouMean(near) ?? 'vehicles are declared in a catalogue, in section vehicles',
  why: `Which years and options a procedure must hold for is read from the vehicle's entry. Without it nothing is checked by variant.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Bore, look at

use "../catalogue/van.bay"

applies to maristo-300
#          ^^^^^^^^^^^ N306

inspection
  step: Look at the bore
    clean bore
--- file: catalogue/van.bay
catalogue: Van

places
  bore: Bore

vehicles
  maristow-300: Maristow 300
`,
  right: `--- file: procedures/a.bay
procedure A-1: Bore, look at

use "../catalogue/van.bay"

applies to maristow-300

inspection
  step: Look at the bore
    clean bore
--- file: catalogue/van.bay
catalogue: Van

places
  bore: Bore

vehicles
  maristow-300: Maristow 300
`,
});
