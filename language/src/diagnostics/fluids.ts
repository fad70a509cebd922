// The diagnostics of fluids and supplies.
import { gradeUnknown } from './l101-grade-unknown.js';
import { gradesDisagree } from './l102-grades-disagree.js';
import { gradeWithdrawn } from './l103-grade-withdrawn.js';
import { mustNotMix } from './l201-must-not-mix.js';
import { mixingAsked } from './l202-mixing-asked.js';
import { fillWithoutAmount } from './l301-fill-without-amount.js';
import { fillOverSystem } from './l302-fill-over-system.js';
import { drainedTwice } from './l303-drained-twice.js';
import { filledTwice } from './l304-filled-twice.js';
import { chargeNotByMass } from './l305-charge-not-by-mass.js';
import { chargeWithoutTolerance } from './l306-charge-without-tolerance.js';
import { chargeOffPlate } from './l307-charge-off-plate.js';
import { sealantWithoutTimes } from './l401-sealant-without-times.js';
import { sealNotRenewed } from './l402-seal-not-renewed.js';
import { partNumberMissing } from './l403-part-number-missing.js';
import { closesMissing } from './l404-closes-missing.js';

export const FLUID_DIAGNOSTICS = [
  gradeUnknown,
  gradesDisagree,
  gradeWithdrawn,
  mustNotMix,
  mixingAsked,
  fillWithoutAmount,
  fillOverSystem,
  drainedTwice,
  filledTwice,
  chargeNotByMass,
  chargeWithoutTolerance,
  chargeOffPlate,
  sealantWithoutTimes,
  sealNotRenewed,
  partNumberMissing,
  closesMissing,
] as const;
