/**
 * Proof, yield and tensile stress of bolts and nuts by class or grade. Data only; `strength.ts` reads it.
 * Values are minimums in MPa; inch grades are kept in ksi, as SAE J429 prints them.
 */
import type { SourceKey } from './sources.js';

/** One class over a range of diameters (mm, both ends included). */
export interface StrengthRow {
  readonly code: string;
  readonly fromMm: number;
  readonly toMm: number;
  readonly proof: number;
  readonly yield: number;
  readonly tensile: number;
  readonly source: SourceKey;
}

const row = (
  source: SourceKey,
  code: string,
  fromMm: number,
  toMm: number,
  proof: number,
  yieldStress: number,
  tensile: number,
): StrengthRow => ({ code, fromMm, toMm, proof, yield: yieldStress, tensile, source });

/** ISO 898-1. The ranges are those of the standard's own tables (M1.6 to M39), with the step of 8.8 at 16 mm. */
export const ISO_CLASSES: readonly StrengthRow[] = [
  row('ISO898_1', '4.6', 1.6, 39, 225, 240, 400),
  row('ISO898_1', '4.8', 1.6, 39, 310, 340, 420),
  row('ISO898_1', '5.6', 1.6, 39, 280, 300, 500),
  row('ISO898_1', '5.8', 1.6, 39, 380, 420, 520),
  row('ISO898_1', '6.8', 1.6, 39, 440, 480, 600),
  row('ISO898_1', '8.8', 1.6, 16, 580, 640, 800),
  row('ISO898_1', '8.8', 16.01, 39, 600, 660, 830),
  row('ISO898_1', '9.8', 1.6, 16, 650, 720, 900),
  row('ISO898_1', '10.9', 1.6, 39, 830, 940, 1040),
  row('ISO898_1', '12.9', 1.6, 39, 970, 1100, 1220),
];

/** SAE J429 in ksi, over inch diameters given here in mm. Grade 2 and 5 step down in the larger sizes. */
export const SAE_GRADES: readonly StrengthRow[] = [
  row('J429', '1', 6.35, 38.1, 33, 36, 60),
  row('J429', '2', 6.35, 19.05, 55, 57, 74),
  row('J429', '2', 19.06, 38.1, 33, 36, 60),
  row('J429', '5', 6.35, 25.4, 85, 92, 120),
  row('J429', '5', 25.41, 38.1, 74, 81, 105),
  row('J429', '5.2', 6.35, 25.4, 85, 92, 120),
  row('J429', '7', 6.35, 38.1, 105, 115, 133),
  row('J429', '8', 6.35, 38.1, 120, 130, 150),
];

/**
 * ISO 3506-1, austenitic. The standard gives no proof stress for bolts: the 0.2 % limit stands in for it.
 * Classes 70 and 80 are assured to 24 mm.
 */
export const STAINLESS_CLASSES: readonly StrengthRow[] = [
  row('ISO3506', '50', 1.6, 39, 210, 210, 500),
  row('ISO3506', '70', 1.6, 24, 450, 450, 700),
  row('ISO3506', '80', 1.6, 24, 600, 600, 800),
];

/** Stress under proof load of a regular nut (MPa) by upper diameter, ISO 898-2; class 12 as its third edition has it. */
export const NUT_PROOF: readonly {
  code: string;
  steps: readonly (readonly [toMm: number, proof: number])[];
  source: SourceKey;
}[] = [
  {
    code: '5',
    steps: [
      [4, 520],
      [7, 580],
      [10, 590],
      [16, 610],
      [39, 630],
    ],
    source: 'ISO898_2',
  },
  {
    code: '6',
    steps: [
      [4, 600],
      [7, 670],
      [10, 680],
      [16, 700],
      [39, 720],
    ],
    source: 'ISO898_2',
  },
  {
    code: '8',
    steps: [
      [4, 800],
      [7, 855],
      [10, 870],
      [16, 880],
      [39, 920],
    ],
    source: 'ISO898_2',
  },
  {
    code: '10',
    steps: [
      [4, 1040],
      [7, 1040],
      [10, 1040],
      [16, 1050],
      [39, 1060],
    ],
    source: 'ISO898_2',
  },
  {
    code: '12',
    steps: [
      [4, 1150],
      [7, 1150],
      [10, 1160],
      [16, 1190],
      [39, 1200],
    ],
    source: 'ISO898_2',
  },
];

/**
 * Bolt class whose yield a nut class can carry (ISO 898-2, table 1): a joint named by its nut is judged as that
 * bolt. Thin nuts (04, 05) may strip first and are not judged.
 */
export const NUT_MATES: readonly { nut: string; bolt: string; source: SourceKey }[] = [
  { nut: '5', bolt: '5.8', source: 'ISO898_2' },
  { nut: '6', bolt: '6.8', source: 'ISO898_2' },
  { nut: '8', bolt: '8.8', source: 'ISO898_2' },
  { nut: '9', bolt: '9.8', source: 'ISO898_2' },
  { nut: '10', bolt: '10.9', source: 'ISO898_2' },
  { nut: '12', bolt: '12.9', source: 'ISO898_2' },
];
