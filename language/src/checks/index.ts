// Every check beside syntax, state and rules, one row each.

import { adapters } from './adapters.js';
import { appliedYears } from './applied-years.js';
import { blocks } from './blocks.js';
import { changedSince } from './changed-since-issue.js';
import type { Check } from './check.js';
import { declaredNames } from './declared-names.js';
import { drivenParts } from './driven-only.js';
import { entryClauses } from './entry-clauses.js';
import { fluidAmounts } from './fluid-amounts.js';
import { fluidGrades } from './fluid-grades.js';
import { heldIn } from './held-in.js';
import { imports } from './imports.js';
import { inspections } from './inspections.js';
import { jointStrength } from './joint-strength.js';
import { kindsFit } from './kinds-fit.js';
import { labour } from './labour.js';
import { limitFigures } from './limit-figures.js';
import { namedWrenches } from './named-wrenches.js';
import { nested } from './nested.js';
import { numbersInText } from './numbers-in-text.js';
import { performed } from './performed.js';
import { quantities } from './quantities.js';
import { referred } from './referred.js';
import { register } from './register.js';
import { cyclicRelations } from './relation-cycles.js';
import { results } from './results.js';
import { ruleLines } from './rule-lines.js';
import { ruleWords } from './rule-words.js';
import { sealsAndSupplies } from './seals-and-supplies.js';
import { signalWords } from './signal-words.js';
import { statementWords } from './statement-words.js';
import { threadSupplies } from './thread-supplies.js';
import { threadsAndHeads } from './threads-and-heads.js';
import { tighteningLines } from './tightening-lines.js';
import { torqueEntries } from './torque-entries.js';
import { troubleCodes } from './trouble-codes.js';
import { twoPlacesAgree } from './two-places.js';
import { undeclared } from './undeclared.js';
import { unknownValues } from './unknown-values.js';
import { usualCautions } from './usual-cautions.js';
import { values } from './values.js';
import { variants } from './variants.js';
import { vin } from './vin.js';
import { wording } from './wording.js';

export const CHECKS: readonly Check[] = [
  nested,
  blocks,
  results,
  quantities,
  twoPlacesAgree,
  numbersInText,
  unknownValues,
  limitFigures,
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
  appliedYears,
  vin,
  threadsAndHeads,
  jointStrength,
  torqueEntries,
  tighteningLines,
  threadSupplies,
  namedWrenches,
  adapters,
  fluidGrades,
  fluidAmounts,
  sealsAndSupplies,
  heldIn,
  drivenParts,
  signalWords,
  usualCautions,
  register,
  labour,
  changedSince,
  inspections,
  wording,
];
