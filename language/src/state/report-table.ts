// Which finding a failed need or a missing state is.
import type { DiagnosticDef } from '../diagnostics/define.js';
import * as D from '../diagnostics/state.js';
import type { StateWords } from '../diagnostics/state-words.js';
import { hasClause } from '../names/model.js';
import type { Need } from '../vocabulary/needs.js';
import type { Lack } from './deficit.js';
import type { Want } from './wants.js';

type Def = DiagnosticDef<StateWords>;

/** Needs whose lack is told at the act. */
const NEED_DEF: Readonly<Partial<Record<Need | 'end', Def>>> = {
  mounted: D.takenOffTwice,
  'some on': D.takenOffTwice,
  connected: D.takenOffTwice,
  hangable: D.takenOffTwice,
  off: D.stillOn,
  'some out': D.stillOn,
  disconnected: D.stillOn,
  'not connected': D.stillOn,
  free: D.stillHeld,
  reachable: D.stillCovered,
  'nothing connected': D.stillConnected,
  'nothing spills': D.spills,
  'tight enough': D.alreadyLoose,
  away: D.alreadyPlaced,
  'not chocked': D.alreadyPlaced,
  placed: D.notPlaced,
  capped: D.notCapped,
  chocked: D.notChocked,
  tagged: D.notTagged,
  tied: D.notTied,
  'drain open': D.drainShut,
  'fill open': D.fillerShut,
  'on ground': D.vehiclePosture,
  raised: D.vehiclePosture,
  up: D.vehiclePosture,
  'suspension free': D.suspensionPosture,
  'suspension loaded': D.suspensionPosture,
  'out to renew': D.renewedInPlace,
  'joint wet': D.jointDry,
  'faces clean': D.facesNotClean,
  'torque clock': D.notCured,
  'fill clock': D.notCured,
  'run clock': D.notCured,
  settled: D.notSettled,
  'holds fluid': D.nothingToCheck,
  posture: D.wrongPosture,
  'snug first': D.angleBeforeSnug,
  'earlier stages': D.stageSkipped,
  'not spent': D.singleUseAgain,
};

export function needDiagnostic(need: Need | 'end', want: Want | undefined): Def {
  return want === 'within time' ? D.sealantSkinned : (NEED_DEF[need] ?? D.outOfOrder);
}

/** Needs whose lack is told at the act even though something later puts it right. */
export const TOLD_AT_ACT: ReadonlySet<Need | 'end'> = new Set<Need>(['away', 'not chocked']);

/** What it is when the missing thing is done later after all. */
export function orderDiagnostic(need: Need | 'end'): Def {
  if (need === 'nothing left behind it') return D.shutIn;
  if (need === 'closed') return D.notClosedWhenFilled;
  if (need === 'wheels on') return D.notSnugWhenLowered;
  return NEED_DEF[need] ?? D.outOfOrder;
}

/** States of putting back, with what it is when they never come and the participle that asks for them. */
/** `last`: seen to when the vehicle is handed back, not where it is put together. */
interface Missing {
  readonly def: Def;
  readonly word: string;
  readonly last?: true;
}

const MISSING: Readonly<Partial<Record<Want, Missing>>> = {
  in: { def: D.neverPutBack, word: 'put on' },
  started: { def: D.neverPutBack, word: 'put in' },
  connected: { def: D.neverConnected, word: 'connected' },
  torqued: { def: D.neverTorqued, word: 'torqued' },
  snug: { def: D.notSnugWhenLowered, word: 'snug' },
  gone: { def: D.leftIn, word: 'taken away' },
  fluid: { def: D.neverFilled, word: 'filled' },
  levelled: { def: D.levelNeverChecked, word: 'checked', last: true },
  bled: { def: D.neverBled, word: 'bled', last: true },
  set: { def: D.notRestored, word: 'set', last: true },
  position: { def: D.notMovedBack, word: 'moved back', last: true },
  adjusted: { def: D.neverAdjusted, word: 'adjusted', last: true },
  unchocked: { def: D.leftChocked, word: 'unchocked', last: true },
  untagged: { def: D.leftTagged, word: 'untagged', last: true },
  untied: { def: D.leftTied, word: 'untied', last: true },
  'back on ground': { def: D.leftRaised, word: 'lowered', last: true },
};

export function missingOf(want: Want): Def {
  return MISSING[want]?.def ?? D.outOfOrder;
}

export const isSeenToLast = (want: Want): boolean => MISSING[want]?.last === true;

/** The participle that asks for what lacks; a fastener without a figure is tightened. */
export function wantedWord({ want, thing }: Pick<Lack, 'want' | 'thing'>): string {
  if (want === 'torqued' && !hasClause(thing, 'torque')) return 'tightened';
  return MISSING[want]?.word ?? 'off';
}
