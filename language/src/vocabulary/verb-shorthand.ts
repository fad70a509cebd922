// Short forms for verb files: the effects and clause slots that most of them share.
import type { QuantityKind } from '../quantity/dimension.js';
import type { ThingKind } from './kinds.js';
import type { ClauseSlot, Effect, VerbDef } from './verb.js';

/** Seen by house rules only: nothing is needed and no state changes. */
export const EVENT: Effect = { needs: [], makes: [] };
/** Seen by house rules only, and the thing must be within reach. */
export const IN_REACH: Effect = { needs: ['reachable'], makes: [] };
/** Within reach, and `if` may ask for the result. */
export const RESULT: Effect = { needs: ['reachable'], makes: ['outcome'] };

/** What a hand takes up to do the work; used for `with` nearly everywhere. */
export const AIDS: readonly ThingKind[] = ['tool', 'supply', 'temporary'];
/** The same, where a fluid of the vehicle may serve: the lip of a seal is oiled with the oil of its gearbox. */
export const WET_AIDS: readonly ThingKind[] = [...AIDS, 'fluid'];
/** What can be pointed at on the vehicle; used for `at`, `on`, `to`, `from`. */
export const SPOTS: readonly ThingKind[] = ['place', 'part', 'fastener', 'connection'];

/** A clause that names things of these kinds. */
export function named(names: readonly ThingKind[], docs: string): ClauseSlot {
  return { names, docs };
}

/** A clause or bare value of these kinds of quantity. */
export function measured(quantity: readonly QuantityKind[], docs: string): ClauseSlot {
  return { quantity, docs };
}

/** A clause of raw text, or a flag. */
export function worded(docs: string): ClauseSlot {
  return { docs };
}

/** The same slot, which the statement may not do without. */
export function required(slot: ClauseSlot): ClauseSlot {
  return { ...slot, required: true };
}

/** What a label hangs on: things of the job within reach, what is at hand anywhere. */
export const labelled = (inReach: Effect, anywhere: Effect): VerbDef['on'] => ({
  part: inReach,
  connection: inReach,
  fastener: inReach,
  place: inReach,
  temporary: anywhere,
  tool: anywhere,
  supply: anywhere,
  machine: anywhere,
});
