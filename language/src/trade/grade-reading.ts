/** What reading a fluid's grade gives: shared by the readers of each standard and by the mixing rules. */

/** Clause words that take a grade. */
export const GRADE_STANDARDS = ['SAE', 'API', 'ACEA', 'DOT', 'ISO', 'NLGI', 'ASTM', 'refrigerant'] as const;

/** A clause word that takes a grade. */
export type GradeStandard = (typeof GRADE_STANDARDS)[number];

/** What a grade belongs to; decides what may mix. */
export type FluidFamily =
  | 'engine oil'
  | 'gear oil'
  | 'glycol brake fluid'
  | 'silicone brake fluid'
  | 'mineral hydraulic oil'
  | 'grease'
  | 'coolant'
  | 'refrigerant'
  | 'urea solution'
  | 'fuel';

/** A grade as read. `printed` is the form to print, with the standard's word; `fix` what to write instead. */
export interface GradeReading {
  readonly ok: boolean;
  readonly standard: GradeStandard;
  readonly printed: string;
  readonly family?: FluidFamily;
  /** Of its categories, those no longer licensed, as printed: `SG, SF`. */
  readonly withdrawn?: string;
  /** A remark that is no fault: withdrawn category, boiling points, safety class. */
  readonly note?: string;
  readonly problem?: string;
  readonly fix?: string;
  readonly source: string;
}
