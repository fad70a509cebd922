// The diagnostics of quantities.
import { unknownUnit } from './q101-unknown-unit.js';
import { wrongDimension } from './q102-wrong-dimension.js';
import { ambiguousUnit } from './q103-ambiguous-unit.js';
import { misleadingUnit } from './q104-misleading-unit.js';
import { missingUnit } from './q105-missing-unit.js';
import { commaInNumber } from './q106-comma-in-number.js';
import { dashedFraction } from './q107-dashed-fraction.js';
import { toleranceReversed } from './q108-tolerance-reversed.js';
import { toleranceTooWide } from './q109-tolerance-too-wide.js';
import { rangeReversed } from './q110-range-reversed.js';
import { rangeTwoKinds } from './q111-range-two-kinds.js';
import { rangeTwoUnits } from './q112-range-two-units.js';
import { toleranceUnit } from './q113-tolerance-unit.js';
import { partsOfAmount } from './q114-parts-of-amount.js';
import { differenceForTemperature } from './q115-difference-for-temperature.js';
import { temperatureForDifference } from './q116-temperature-for-difference.js';
import { implausibleValue } from './q117-implausible.js';
import { twoPlaces } from './q118-two-values.js';
import { numberInText } from './q119-number-in-text.js';
import { valueNotKnown } from './q120-value-not-known.js';
import { troubleCodeForm } from './q121-trouble-code-form.js';
import { newOutsideLimit } from './q122-new-outside-limit.js';
import { limitSideMissing } from './q123-limit-side-missing.js';

export const QUANTITY_DIAGNOSTICS = [
  unknownUnit,
  wrongDimension,
  ambiguousUnit,
  misleadingUnit,
  missingUnit,
  commaInNumber,
  dashedFraction,
  toleranceReversed,
  toleranceTooWide,
  rangeReversed,
  rangeTwoKinds,
  rangeTwoUnits,
  toleranceUnit,
  partsOfAmount,
  differenceForTemperature,
  temperatureForDifference,
  implausibleValue,
  twoPlaces,
  numberInText,
  valueNotKnown,
  troubleCodeForm,
  newOutsideLimit,
  limitSideMissing,
] as const;

export {
  ambiguousUnit,
  commaInNumber,
  dashedFraction,
  differenceForTemperature,
  implausibleValue,
  misleadingUnit,
  missingUnit,
  numberInText,
  partsOfAmount,
  rangeReversed,
  rangeTwoKinds,
  rangeTwoUnits,
  temperatureForDifference,
  toleranceReversed,
  toleranceTooWide,
  toleranceUnit,
  twoPlaces,
  unknownUnit,
  valueNotKnown,
  wrongDimension,
};
