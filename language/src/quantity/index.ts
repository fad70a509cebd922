/** The quantity folder's door: exact numbers, units, measures, conversion, and their reading and writing. */
export { ambiguousSpellings, type UnitReading } from './ambiguous.js';
export {
  compatible,
  convert,
  convertRounded,
  convertValue,
  explainIncompatible,
  otherSystem,
} from './convert.js';
export {
  type Dimension,
  dimensionOf,
  type KindRow,
  type QuantityKind,
  quantityKinds,
} from './dimension.js';
export { formatMeasure, formatSpec, unitText } from './format-measure.js';
export { digitsFor, type FormatOptions, formatNumber, sourceStyle } from './format-number.js';
export {
  type Amount,
  type AmountPart,
  type Bound,
  type CompoundProblem,
  type Extent,
  foldParts,
  limitsOf,
  type Measure,
  type Range,
  type Spec,
  type Stage,
  toSI,
  valueFromSI,
  valueToSI,
  withPercent,
} from './measure.js';
export { nearestUnit } from './nearest-unit.js';
export {
  parseQuantity,
  parseUnit,
  type QuantityOptions,
  type QuantityProblem,
} from './parse-quantity.js';
export { implausible, type PlausibleRow, type QuantityUse } from './plausible.js';
export { numberOf, powerOfTen, Rational, rational } from './rational.js';
export {
  type Digits,
  type NumberProblem,
  type NumberReading,
  type ReadNumber,
  readNumber,
} from './read-number.js';
export {
  definiteSpelling,
  isSpace,
  type ReadUnit,
  readingsFor,
  readUnit,
  resolveUnit,
  type UnitChoice,
} from './read-unit.js';
export { magnitude, type RoundingMode, roundTo } from './round.js';
export type { Unit, UnitName, UnitSystem } from './unit.js';
export { findUnit, unitById, units } from './unit-table.js';
export { usualUnits } from './usual-units.js';
