// Every check beside syntax, state and rules, one row each.
import type { Check } from './check.js';
import { numbersInText } from './numbers-in-text.js';
import { quantities } from './quantities.js';
import { twoPlacesAgree } from './two-places.js';
import { unknownValues } from './unknown-values.js';
import { fluidGrades } from './fluid-grades.js';
import { fluidAmounts } from './fluid-amounts.js';
import { register } from './register.js';
import { sealsAndSupplies } from './seals-and-supplies.js';
import { jointStrength } from './joint-strength.js';
import { signalWords } from './signal-words.js';
import { usualCautions } from './usual-cautions.js';
import { threadsAndHeads } from './threads-and-heads.js';
import { tighteningLines } from './tightening-lines.js';
import { torqueEntries } from './torque-entries.js';

export const CHECKS: readonly Check[] = [
  quantities,
  twoPlacesAgree,
  numbersInText,
  unknownValues,
  threadsAndHeads,
  jointStrength,
  torqueEntries,
  tighteningLines,
  fluidGrades,
  fluidAmounts,
  sealsAndSupplies,
  signalWords,
  usualCautions,
  register,
];
