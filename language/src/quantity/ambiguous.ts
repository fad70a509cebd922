/**
 * Spellings that could be more than one unit. What stands here is never guessed: the place it is written in
 * may leave one reading (a `lb` where a mass is wanted), otherwise the writer is asked, one fix a reading.
 * Why each is a trap: common practice, except `mΩ`/`MΩ`-like pairs, which the reader finds by itself.
 */
import type { Unit } from './unit.js';
import { unitById } from './unit-table.js';
import { bareVolumes } from './units/volume.js';

/** One thing a spelling may mean. */
export interface UnitReading {
  readonly unit: Unit;
  /** In the writer's words: `foot-pounds, a torque`. */
  readonly meaning: string;
  /**
   * Taken without asking among readings of one kind. Only where it is what shops write: a quart is the US one
   * wherever it is still used, and the fluid ounces are 4 % apart. Gallons and pints, 20 % apart and both in
   * use, have none.
   */
  readonly isUsual?: boolean;
}

interface AmbiguousRow {
  readonly spellings: readonly string[];
  readonly readings: readonly UnitReading[];
}

const pounds = [
  reading('lb', 'pounds, a mass'),
  reading('ft-lbf', 'foot-pounds, a torque'),
  reading('in-lbf', 'inch-pounds, a torque'),
  reading('lbf', 'pounds of force'),
  reading('psi', 'pounds per square inch, a pressure'),
];

/** One row per trap. */
export const ambiguousSpellings: readonly AmbiguousRow[] = [
  { spellings: ['lb', 'lb.', 'lbs', 'lbs.', 'pound', 'pounds', '#'], readings: pounds },
  {
    spellings: ['oz', 'oz.', 'ozs', 'ounce', 'ounces'],
    readings: [
      reading('oz', 'ounces, a mass'),
      reading('fl-oz-us', 'US fluid ounces, a volume'),
      reading('fl-oz-imp', 'imperial fluid ounces, a volume'),
      reading('in-ozf', 'inch-ounces, a torque'),
    ],
  },
  { spellings: bareVolumes.gallons, readings: eitherCountry('gal-us', 'gal-imp', 'gallons') },
  { spellings: bareVolumes.quarts, readings: usuallyAmerican('qt-us', 'qt-imp', 'quarts') },
  { spellings: bareVolumes.pints, readings: eitherCountry('pt-us', 'pt-imp', 'pints') },
  { spellings: bareVolumes.fluidOunces, readings: usuallyAmerican('fl-oz-us', 'fl-oz-imp', 'fluid ounces') },
  {
    spellings: ['gpm', 'GPM', 'gal/min'],
    readings: eitherCountry('gal-us-per-min', 'gal-imp-per-min', 'gallons per minute'),
  },
  {
    spellings: ['ton', 'tons'],
    readings: [
      reading('t', 'tonnes of 1000 kg'),
      reading('ton-us', 'short tons of 2000 lb'),
      reading('ton-imp', 'long tons of 2240 lb'),
    ],
  },
  {
    spellings: ['nm'],
    readings: [reading('N-m', 'newton metres, a torque'), reading('nanometre', 'nanometres, a length')],
  },
  {
    spellings: ['NM'],
    readings: [reading('N-m', 'newton metres, a torque'), reading('nmi', 'nautical miles, a length')],
  },
  {
    spellings: ['M'],
    readings: [
      reading('m', 'metres, a length'),
      reading('min', 'minutes, a time'),
      reading('mi', 'miles, a length'),
    ],
  },
  {
    spellings: ['mil'],
    readings: [
      reading('thou', 'thousandths of an inch'),
      reading('mm', 'millimetres'),
      reading('mL', 'millilitres, a volume'),
    ],
  },
  {
    spellings: ["'"],
    readings: [reading('ft', 'feet, a length'), reading('arcminute', 'minutes of arc, an angle')],
  },
  {
    spellings: ['T'],
    readings: [reading('t', 'tonnes, a mass'), reading('turn', 'turns, an angle')],
  },
];

function reading(id: string, meaning: string): UnitReading {
  return { unit: unitById(id), meaning };
}

function eitherCountry(american: string, imperial: string, what: string): UnitReading[] {
  return [reading(american, `US ${what}`), reading(imperial, `imperial ${what}`)];
}

function usuallyAmerican(american: string, imperial: string, what: string): UnitReading[] {
  return [{ ...reading(american, `US ${what}`), isUsual: true }, reading(imperial, `imperial ${what}`)];
}
