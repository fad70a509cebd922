// The diagnostics of variants; V101 comes from the state analysis.
import { valueGap } from './v102-value-gap.js';
import { twoValues } from './v103-value-twice.js';
import { guardNeverHolds } from './v104-guard-never-holds.js';
import { unknownOption } from './v105-unknown-option.js';
import { unknownOptionValue } from './v106-unknown-option-value.js';
import { vinUnreadable } from './v107-vin-unreadable.js';
import { vinRange } from './v108-vin-range.js';
import { yearsOutside } from './v109-years-outside.js';

export const VARIANT_DIAGNOSTICS = [
  valueGap,
  twoValues,
  guardNeverHolds,
  unknownOption,
  unknownOptionValue,
  vinUnreadable,
  vinRange,
  yearsOutside,
] as const;

export { guardNeverHolds, twoValues, unknownOption, unknownOptionValue, valueGap };
