// The diagnostics of the state analysis.
import { wrongPosture } from './f301-wrong-posture.js';
import { angleBeforeSnug } from './f302-angle-before-snug.js';
import { singleUseAgain } from './f303-single-use-again.js';
import { stageSkipped } from './f304-stage-skipped.js';
import { takenOffTwice } from './s101-taken-off-twice.js';
import { stillOn } from './s102-still-on.js';
import { stillHeld } from './s103-still-held.js';
import { stillCovered } from './s104-still-covered.js';
import { stillConnected } from './s105-still-connected.js';
import { alreadyLoose } from './s106-already-loose.js';
import { alreadyPlaced } from './s107-already-placed.js';
import { notPlaced } from './s108-not-placed.js';
import { notCapped } from './s109-not-capped.js';
import { notChocked } from './s110-not-chocked.js';
import { drainShut } from './s111-drain-shut.js';
import { fillerShut } from './s112-filler-shut.js';
import { vehiclePosture } from './s113-vehicle-posture.js';
import { suspensionPosture } from './s114-suspension-posture.js';
import { renewedInPlace } from './s115-renewed-in-place.js';
import { spills } from './s116-spills.js';
import { notTagged } from './s117-not-tagged.js';
import { notTied } from './s118-not-tied.js';
import { outOfOrder } from './s201-out-of-order.js';
import { shutIn } from './s202-shut-in.js';
import { notClosedWhenFilled } from './s203-not-closed-when-filled.js';
import { jointDry } from './s204-joint-dry.js';
import { sealantSkinned } from './s205-sealant-skinned.js';
import { facesNotClean } from './s206-faces-not-clean.js';
import { notCured } from './s207-not-cured.js';
import { notSettled } from './s208-not-settled.js';
import { nothingToCheck } from './s209-nothing-to-check.js';
import { neverPutBack } from './s301-never-put-back.js';
import { neverConnected } from './s302-never-connected.js';
import { neverTorqued } from './s303-never-torqued.js';
import { notSnugWhenLowered } from './s304-not-snug-when-lowered.js';
import { leftIn } from './s305-left-in.js';
import { neverFilled } from './s306-never-filled.js';
import { levelNeverChecked } from './s307-level-never-checked.js';
import { neverBled } from './s308-never-bled.js';
import { notRestored } from './s309-not-restored.js';
import { notMovedBack } from './s310-not-moved-back.js';
import { neverAdjusted } from './s311-never-adjusted.js';
import { leftChocked } from './s312-left-chocked.js';
import { leftRaised } from './s313-left-raised.js';
import { leftTagged } from './s314-left-tagged.js';
import { leftTied } from './s315-left-tied.js';
import { drivenOnly } from './s316-driven-only.js';
import { pathsDiffer } from './s401-paths-differ.js';
import { neverReached } from './s402-never-reached.js';
import { houseRule } from './s403-house-rule.js';
import { usualPractice } from './s404-usual-practice.js';
import { ruleUnreadable } from './s405-rule-unreadable.js';
import { absentThing } from './v101-absent-thing.js';

export const STATE_DIAGNOSTICS = [
  wrongPosture,
  angleBeforeSnug,
  singleUseAgain,
  stageSkipped,
  takenOffTwice,
  stillOn,
  stillHeld,
  stillCovered,
  stillConnected,
  alreadyLoose,
  alreadyPlaced,
  notPlaced,
  notCapped,
  notChocked,
  drainShut,
  fillerShut,
  vehiclePosture,
  suspensionPosture,
  renewedInPlace,
  spills,
  notTagged,
  notTied,
  outOfOrder,
  shutIn,
  notClosedWhenFilled,
  jointDry,
  sealantSkinned,
  facesNotClean,
  notCured,
  notSettled,
  nothingToCheck,
  neverPutBack,
  neverConnected,
  neverTorqued,
  notSnugWhenLowered,
  leftIn,
  neverFilled,
  levelNeverChecked,
  neverBled,
  notRestored,
  notMovedBack,
  neverAdjusted,
  leftChocked,
  leftRaised,
  leftTagged,
  leftTied,
  drivenOnly,
  pathsDiffer,
  neverReached,
  houseRule,
  usualPractice,
  ruleUnreadable,
  absentThing,
] as const;

export {
  alreadyLoose,
  alreadyPlaced,
  angleBeforeSnug,
  drainShut,
  drivenOnly,
  facesNotClean,
  fillerShut,
  jointDry,
  leftChocked,
  leftIn,
  leftRaised,
  leftTagged,
  leftTied,
  levelNeverChecked,
  neverAdjusted,
  neverBled,
  neverConnected,
  neverFilled,
  neverPutBack,
  neverTorqued,
  notCapped,
  notChocked,
  notClosedWhenFilled,
  notCured,
  nothingToCheck,
  notMovedBack,
  notPlaced,
  notRestored,
  notSettled,
  notSnugWhenLowered,
  notTagged,
  notTied,
  outOfOrder,
  renewedInPlace,
  sealantSkinned,
  shutIn,
  singleUseAgain,
  spills,
  stageSkipped,
  stillConnected,
  stillCovered,
  stillHeld,
  stillOn,
  suspensionPosture,
  takenOffTwice,
  vehiclePosture,
  wrongPosture,
};
