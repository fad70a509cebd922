// Every check beside syntax, state and rules, one row each.
import type { Check } from './check.js';
import { declaredNames } from './declared-names.js';
import { entryClauses } from './entry-clauses.js';
import { imports } from './imports.js';
import { kindsFit } from './kinds-fit.js';
import { performed } from './performed.js';
import { referred } from './referred.js';
import { cyclicRelations } from './relation-cycles.js';
import { ruleLines } from './rule-lines.js';
import { ruleWords } from './rule-words.js';
import { statementWords } from './statement-words.js';
import { undeclared } from './undeclared.js';
import { values } from './values.js';
import { variants } from './variants.js';
import { numbersInText } from './numbers-in-text.js';
import { quantities } from './quantities.js';
import { twoPlacesAgree } from './two-places.js';
import { unknownValues } from './unknown-values.js';
import { fluidGrades } from './fluid-grades.js';
import { fluidAmounts } from './fluid-amounts.js';
import { changedSince } from './changed-since-issue.js';
import { register } from './register.js';
import { sealsAndSupplies } from './seals-and-supplies.js';
import { inspections } from './inspections.js';
import { wording } from './wording.js';
import { jointStrength } from './joint-strength.js';
import { signalWords } from './signal-words.js';
import { usualCautions } from './usual-cautions.js';
import { threadsAndHeads } from './threads-and-heads.js';
import { adapters } from './adapters.js';
import { tighteningLines } from './tightening-lines.js';
import { labour } from './labour.js';
import { troubleCodes } from './trouble-codes.js';
import { vin } from './vin.js';
import { torqueEntries } from './torque-entries.js';

export const CHECKS: readonly Check[] = [
  quantities,
  twoPlacesAgree,
  numbersInText,
  unknownValues,
  troubleCodes,
  imports,
  undeclared,
  declaredNames,
  kindsFit,
  statementWords,
  entryClauses,
  values,
  performed,
  referred,
  cyclicRelations,
  ruleLines,
  ruleWords,
  variants,
  vin,
  threadsAndHeads,
  jointStrength,
  torqueEntries,
  tighteningLines,
  adapters,
  fluidGrades,
  fluidAmounts,
  sealsAndSupplies,
  signalWords,
  usualCautions,
  register,
  labour,
  changedSince,
  inspections,
  wording,
];
