/**
 * Trade computations: threads and classes, the joint check, tightening orders, wrenches, fluids, time, readings and
 * codes. Pure functions on plain numbers with the unit in the name; every result names its source.
 */

export {
  coolantFreezePoint,
  coolantMix,
  coolantTopUp,
  type Glycol,
  glycolsOf,
} from './coolant.js';
export {
  containersToPull,
  overfill,
  WASTE_STREAMS,
} from './fluid-amounts.js';
export {
  type Finish,
  FRICTION,
  type Lubrication,
  lubricantOnDrySpec,
  type NutFactor,
  nutFactor,
  wet,
} from './friction.js';
export { type FluidFamily, GRADE_STANDARDS, type GradeReading, type GradeStandard } from './grade-reading.js';
export { readGrade } from './grades.js';
export {
  type HeadSize,
  headSizes,
  headSuspicious,
  hexalobularSizes,
  hexalobularSuspicious,
  inchFraction,
  inchText,
  isKey,
  type OddHead,
  threadsForHead,
} from './heads.js';
export {
  type AngleStretch,
  angleStretch,
  checkJoint,
  checkUnclassed,
  type JointCheck,
  type JointInput,
  type UnclassedCheck,
} from './joint.js';
export {
  type Bounds,
  endPlay,
  type LimitCheck,
  limitCheck,
  type ShimChoice,
  shimFor,
  type WearForecast,
  type WearRate,
  wearToService,
} from './measure.js';
export { type Mixing, mayMix, suits } from './mixing.js';
export {
  isOrder,
  ORDER_PATTERNS,
  type OrderInput,
  type OrderLayout,
  type OrderPattern,
  type OrderProblem,
  reverseOrder,
  type TighteningOrder,
  tighteningOrder,
} from './order.js';
export type { Point } from './order-grid.js';
export { readOrder } from './order-read.js';
export {
  orderCaption,
  orderNumbers,
  orderSentence,
  type SentenceLanguage,
  type SentenceOptions,
} from './order-sentence.js';
export { type DiagramOptions, orderSvg, orderText } from './order-svg.js';
export { type FastenerNamed, readFastener } from './read-joint.js';
export { SOURCES, type Source, type SourceKey, type SourceKind, sourceTitle } from './sources.js';
export { usualStages } from './stages.js';
export {
  type ClassProblem,
  isClass,
  nutProofMPa,
  readClass,
  type Strength,
  type StrengthClass,
  strength,
} from './strength.js';
export { isThread, readThread, stressAreaMm2, type Thread, type ThreadProblem } from './thread.js';
export {
  type Clock,
  type LabourCheck,
  labourCheck,
  type StepTime,
  type TimedStep,
  type Timeline,
  timeline,
  timeText,
} from './time.js';
export { dtcCheck, dtcMeant, type TroubleCode } from './trouble-code.js';
export { type VinCheck, vinCheck, vinMeant, vinRangeFault } from './vin.js';
export {
  type AdapterSetting,
  chooseWrench,
  crowfootSetting,
  type DriveRow,
  drive,
  type TorqueTool,
  type WrenchChoice,
} from './wrench.js';
