// Model years that the vehicle was not made in.
import { defineDiagnostic } from './define.js';

const van = `--- file: catalogue/van.bay
catalogue: Van

vehicles
  van: Delivery van
    years 2018 to 2025
`;
const job = (years: string, mark = ''): string => `--- file: procedures/a.bay
procedure A-1: Sill, look at

use "../catalogue/van.bay"

applies to van from ${years}
${mark}
places
  sill: Sill

inspection
  step: Look at the sill
    clean sill
${van}`;

export const yearsOutside = defineDiagnostic<{
  readonly vehicle: string;
  readonly years: string;
  /** The first of the years written that is not among them; absent where the later year stands first. */
  readonly year: number | undefined;
}>({
  code: 'V109',
  name: 'years-outside',
  severity: 'warning',
  message: ({ vehicle, years, year }) =>
    year === undefined
      ? 'the later year stands first: no vehicle is meant'
      : `\`${vehicle}\` is in the fleet from ${years}, not of ${year}`,
  advice: ({ year }) =>
    year === undefined
      ? 'write the earlier year first'
      : 'correct the years here, or those of the vehicle in its catalogue',
  why: `The years of a vehicle stand once, in its catalogue. A procedure for other years is printed for vans that the shop does not have, and a typing error in a year leaves out some that it has.`,
  wrong: job('2017 to 2025', '#                   ^^^^^^^^^^^^ V109\n'),
  right: job('2018 to 2025', '\n').replace('\n\n\n', '\n\n'),
});
