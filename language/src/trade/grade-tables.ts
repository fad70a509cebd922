/** Grades and categories of fluids by standard. Data only; `grades.ts` reads it. */
import type { SourceKey } from './sources.js';

/** One gear oil grade of SAE J306: kinematic viscosity at 100 °C, mm²/s, and for W grades the cold limit, °C. */
export interface GearOilRow {
  readonly grade: string;
  readonly minKv100: number;
  readonly maxKv100?: number;
  readonly coldLimitC?: number;
  readonly source: SourceKey;
}

/** SAE J306, February 2019. */
export const GEAR_OILS: readonly GearOilRow[] = [
  { grade: '70W', minKv100: 3.8, coldLimitC: -55, source: 'J306' },
  { grade: '75W', minKv100: 3.8, coldLimitC: -40, source: 'J306' },
  { grade: '80W', minKv100: 8.5, coldLimitC: -26, source: 'J306' },
  { grade: '85W', minKv100: 11, coldLimitC: -12, source: 'J306' },
  { grade: '65', minKv100: 3.8, maxKv100: 5, source: 'J306' },
  { grade: '70', minKv100: 5, maxKv100: 6.5, source: 'J306' },
  { grade: '75', minKv100: 6.5, maxKv100: 8.5, source: 'J306' },
  { grade: '80', minKv100: 8.5, maxKv100: 11, source: 'J306' },
  { grade: '85', minKv100: 11, maxKv100: 13.5, source: 'J306' },
  { grade: '90', minKv100: 13.5, maxKv100: 18.5, source: 'J306' },
  { grade: '110', minKv100: 18.5, maxKv100: 24, source: 'J306' },
  { grade: '140', minKv100: 24, maxKv100: 32.5, source: 'J306' },
  { grade: '190', minKv100: 32.5, maxKv100: 41, source: 'J306' },
  { grade: '250', minKv100: 41, source: 'J306' },
];

/** One engine oil grade of SAE J300: kinematic viscosity at 100 °C, mm²/s; W grades: cranking temperature, °C. */
export interface EngineOilRow {
  readonly grade: string;
  readonly minKv100: number;
  readonly maxKv100?: number;
  readonly crankingC?: number;
  readonly source: SourceKey;
}

/** SAE J300. The row of grade 12 is recalled, not seen. */
export const ENGINE_OILS: readonly EngineOilRow[] = [
  { grade: '0W', minKv100: 3.8, crankingC: -35, source: 'J300' },
  { grade: '5W', minKv100: 3.8, crankingC: -30, source: 'J300' },
  { grade: '10W', minKv100: 4.1, crankingC: -25, source: 'J300' },
  { grade: '15W', minKv100: 5.6, crankingC: -20, source: 'J300' },
  { grade: '20W', minKv100: 5.6, crankingC: -15, source: 'J300' },
  { grade: '25W', minKv100: 9.3, crankingC: -10, source: 'J300' },
  { grade: '8', minKv100: 4, maxKv100: 6.1, source: 'J300' },
  { grade: '12', minKv100: 5, maxKv100: 7.1, source: 'MEMORY' },
  { grade: '16', minKv100: 6.1, maxKv100: 8.2, source: 'J300' },
  { grade: '20', minKv100: 6.9, maxKv100: 9.3, source: 'J300' },
  { grade: '30', minKv100: 9.3, maxKv100: 12.5, source: 'J300' },
  { grade: '40', minKv100: 12.5, maxKv100: 16.3, source: 'J300' },
  { grade: '50', minKv100: 16.3, maxKv100: 21.9, source: 'J300' },
  { grade: '60', minKv100: 21.9, maxKv100: 26.1, source: 'J300' },
];

/** One service category: what it is for and whether it is still licensed. */
export interface CategoryRow {
  readonly code: string;
  readonly use: 'gear' | 'petrol engine' | 'diesel engine' | 'engine';
  readonly current: boolean;
  readonly source: SourceKey;
}

const categories = (
  source: SourceKey,
  use: CategoryRow['use'],
  current: boolean,
  codes: string,
): CategoryRow[] => codes.split(' ').map((code) => ({ code: code.replace('_', ' '), use, current, source }));

/** API gear and engine categories. Engine status as published lists give it. */
export const API_CATEGORIES: readonly CategoryRow[] = [
  ...categories('API1560', 'gear', true, 'GL-4 GL-5 MT-1'),
  ...categories('API1560', 'gear', false, 'GL-1 GL-2 GL-3 GL-6'),
  ...categories('API1509', 'petrol engine', true, 'SJ SL SM SN SN_PLUS SP SQ'),
  ...categories('API1509', 'petrol engine', false, 'SA SB SC SD SE SF SG SH'),
  ...categories('API1509', 'diesel engine', true, 'CH-4 CI-4 CI-4_PLUS CJ-4 CK-4 FA-4'),
  ...categories('API1509', 'diesel engine', false, 'CA CB CC CD CD-II CE CF CF-2 CF-4 CG-4'),
];

/** ACEA sequences; the earlier ones stay readable because procedures for older vehicles name them. Recalled. */
export const ACEA_CATEGORIES: readonly CategoryRow[] = [
  ...categories('MEMORY', 'engine', true, 'A3/B4 A5/B5 A7/B7 C2 C3 C4 C5 C6 C7'),
  ...categories('MEMORY', 'engine', false, 'A1/B1 A3/B3 C1'),
  ...categories('MEMORY', 'diesel engine', true, 'E4 E7 E8 E11 F01'),
  ...categories('MEMORY', 'diesel engine', false, 'E6 E9'),
];

/** Brake fluid of FMVSS 116: boiling points dry and wet (°C, minimum), and its base. */
export interface BrakeFluidRow {
  readonly code: string;
  readonly dryC: number;
  readonly wetC: number;
  readonly base: 'glycol' | 'silicone';
  readonly source: SourceKey;
}

/** FMVSS 116 S5.1. DOT 5 is at least 70 % silicone; DOT 5.1 meets the same points on glycol. */
export const BRAKE_FLUIDS: readonly BrakeFluidRow[] = [
  { code: 'DOT 3', dryC: 205, wetC: 140, base: 'glycol', source: 'FMVSS116' },
  { code: 'DOT 4', dryC: 230, wetC: 155, base: 'glycol', source: 'FMVSS116' },
  { code: 'DOT 5', dryC: 260, wetC: 180, base: 'silicone', source: 'FMVSS116' },
  { code: 'DOT 5.1', dryC: 260, wetC: 180, base: 'glycol', source: 'FMVSS116' },
];

/** ISO 3448 viscosity classes, mm²/s at 40 °C. */
export const ISO_VG: readonly number[] = [
  2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200,
];

/** NLGI consistency numbers, and the automotive service letters of ASTM D4950. */
export const NLGI_NUMBERS: readonly string[] = ['000', '00', '0', '1', '2', '3', '4', '5', '6'];
export const NLGI_LETTERS: readonly string[] = ['LA', 'LB', 'GA', 'GB', 'GC', 'GC-LB'];

/** ASTM coolant and fuel specifications a shop names. */
export const ASTM_SPECS: readonly { code: string; use: 'coolant' | 'fuel' | 'grease'; source: SourceKey }[] =
  [
    { code: 'D3306', use: 'coolant', source: 'D3306' },
    { code: 'D4985', use: 'coolant', source: 'MEMORY' },
    { code: 'D6210', use: 'coolant', source: 'MEMORY' },
    { code: 'D6211', use: 'coolant', source: 'MEMORY' },
    { code: 'D7583', use: 'coolant', source: 'MEMORY' },
    { code: 'D975', use: 'fuel', source: 'MEMORY' },
    { code: 'D4814', use: 'fuel', source: 'MEMORY' },
    { code: 'D4950', use: 'grease', source: 'MEMORY' },
  ];

/** Vehicle refrigerants with their safety class (ISO 817). Classes are recalled. */
export const REFRIGERANTS: readonly { code: string; safety: string; source: SourceKey }[] = [
  { code: 'R-12', safety: 'A1', source: 'CFR82' },
  { code: 'R-134a', safety: 'A1', source: 'CFR82' },
  { code: 'R-1234yf', safety: 'A2L', source: 'CFR82' },
  { code: 'R-152a', safety: 'A2', source: 'ISO817' },
  { code: 'R-404A', safety: 'A1', source: 'ISO817' },
  { code: 'R-452A', safety: 'A1', source: 'ISO817' },
  { code: 'R-513A', safety: 'A1', source: 'ISO817' },
  { code: 'R-744', safety: 'A1', source: 'ISO817' },
];
