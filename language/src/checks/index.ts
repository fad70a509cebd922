// Every check beside syntax, state and rules, one row each.
import type { Check } from './check.js';
import { fluidGrades } from './fluid-grades.js';
import { fluidAmounts } from './fluid-amounts.js';
import { sealsAndSupplies } from './seals-and-supplies.js';
import { jointStrength } from './joint-strength.js';
import { threadsAndHeads } from './threads-and-heads.js';
import { tighteningLines } from './tightening-lines.js';
import { torqueEntries } from './torque-entries.js';

export const CHECKS: readonly Check[] = [
  threadsAndHeads,
  jointStrength,
  torqueEntries,
  tighteningLines,
  fluidGrades,
  fluidAmounts,
  sealsAndSupplies,
];
