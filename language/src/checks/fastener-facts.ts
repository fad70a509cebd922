// What the fastener checks read of a set: its thread and class by their standards, what is on the threads, its
// torques in newton metres.

import type { Job } from '../names/job.js';
import { clausesOf, hasClause, type Thing, type ThingClause } from '../names/model.js';
import { type Measure, numberOf, type QuantityUse, toSI, type Unit } from '../quantity/index.js';
import type { MeasureNode, Raw, SpecNode } from '../syntax/tree.js';
import { once } from '../text/once.js';
import type { Lubrication } from '../trade/friction.js';
import { isClass, readClass, type StrengthClass } from '../trade/strength.js';
import { isThread, readThread, type Thread } from '../trade/thread.js';
import { isRetainer } from '../vocabulary/formless.js';
import type { VerbDef } from '../vocabulary/verb.js';

/** The thread, undefined for retainers without one, holes and text that is no thread. */
export function threadOf(thing: Thing): Thread | undefined {
  const raw = threadRaw(thing);
  if (!raw || raw.hole || isRetainer(raw.text)) return undefined;
  const thread = readThread(raw.text);
  return isThread(thread) ? thread : undefined;
}

/** What stands after `of`. */
export function threadRaw(thing: Thing): Raw | undefined {
  return clausesOf(thing, 'of')[0]?.clause.raw;
}

/** Every class or grade clause with its reading. */
export function classClauses(
  thing: Thing,
): { readonly at: ThingClause; readonly raw: Raw; readonly read: ReturnType<typeof readClass> }[] {
  return (['class', 'grade'] as const).flatMap((word) =>
    clausesOf(thing, word).flatMap((at) =>
      at.clause.raw && !at.clause.raw.hole
        ? [{ at, raw: at.clause.raw, read: readClass(at.clause.raw.text, word) }]
        : [],
    ),
  );
}

/** The classes that could be read. */
export function classesOf(thing: Thing): StrengthClass[] {
  return classClauses(thing)
    .map((c) => c.read)
    .filter((c) => isClass(c));
}

/** What the entry says is on the threads. */
export function lubricationOf(thing: Thing): Lubrication | undefined {
  if (hasClause(thing, 'threadlocker')) return 'threadlocker';
  const lubricant = clausesOf(thing, 'lubricant')[0]?.clause.raw?.text;
  if (lubricant !== undefined) return lubricantNamed(lubricant) ?? 'grease';
  if (hasClause(thing, 'oiled')) return 'oiled';
  return hasClause(thing, 'dry') ? 'dry' : undefined;
}

/** The kind of lubricant a shop's word names, undefined when the word does not tell. */
export function lubricantNamed(words: string): Lubrication | undefined {
  const text = words.toLowerCase().replaceAll('-', ' ');
  if (/anti ?seize|copper|moly/.test(text)) return 'anti-seize';
  if (/ptfe/.test(text)) return 'ptfe';
  if (/thread ?lock/.test(text)) return 'threadlocker';
  if (/grease/.test(text)) return 'grease';
  return /\boil/.test(text) ? 'oiled' : undefined;
}

/** One torque of a spec with where it is written. Newton metres; a plain value has both ends at it. */
export interface StageTorque {
  readonly at: MeasureNode;
  /** The value judged against yield: the nominal, or the upper end of a range. */
  readonly highNm: number;
  /** The value judged against too little: the nominal, or the lower end of a range. */
  readonly lowNm: number;
  readonly unit: Unit;
  /** Nothing tightens the set further after it. */
  readonly last: boolean;
}

/** The torques of a spec; angles, holes and quantities of another kind are passed over. */
export function stageTorques(spec: SpecNode | undefined): StageTorque[] {
  const stages = spec?.stages ?? [];
  return stages.flatMap((stage, i) => {
    const { measure } = stage.measure;
    if (measure?.unit.kind !== 'torque' || stage.back) return [];
    const ends = torqueEnds(measure);
    return ends ? [{ at: stage.measure, ...ends, unit: measure.unit, last: i === stages.length - 1 }] : [];
  });
}

/** The two ends that a torque is judged at. */
const torqueEnds = once((measure: Measure): Pick<StageTorque, 'highNm' | 'lowNm'> | undefined => {
  const { nominal, low, high } = toSI(measure);
  const top = nominal ?? high ?? low;
  const bottom = nominal ?? low ?? high;
  return top && bottom ? { highNm: numberOf(top), lowNm: numberOf(bottom) } : undefined;
});

/** Sum of the angle stages of a spec in degrees, 0 without any. */
export function angleDegrees(spec: SpecNode | undefined): number {
  let sum = 0;
  for (const stage of spec?.stages ?? []) {
    const { measure } = stage.measure;
    if (stage.back || measure?.unit.kind !== 'angle') continue;
    const { nominal, high, low } = toSI(measure);
    const value = nominal ?? high ?? low;
    if (value) sum += numberOf(value);
  }
  return sum;
}

/** A length clause in millimetres, undefined when absent, a hole or not a length. */
export function millimetres(
  thing: Thing,
  word: string,
): { readonly mm: number; readonly at: ThingClause } | undefined {
  const at = clausesOf(thing, word)[0];
  const measure = at?.clause.spec?.stages[0]?.measure.measure;
  if (!at || !measure || measure.unit.kind !== 'length') return undefined;
  const { nominal, low } = toSI(measure);
  const value = nominal ?? low;
  return value ? { mm: numberOf(value) * 1000, at } : undefined;
}

/** Whether the verb tightens to a figure, as `torque` does. */
export function asksForTorque(verb: VerbDef): boolean {
  return verb.on.fastener?.needs.includes('has torque') ?? false;
}

/** Whether the verb tightens for good without a figure, as `tighten` does. */
export function tightensByHand(verb: VerbDef): boolean {
  return verb.on.fastener?.needs.includes('hand tight') ?? false;
}

/** What a torque of the set is for, for bands of plausible values. */
export function torqueUse(job: Job, thing: Thing): QuantityUse {
  if (job.inverse(thing, 'held by').some((r) => r.of.marks.includes('wheel'))) return 'wheel-nut torque';
  return job.inverse(thing, 'drain at').length > 0 ? 'drain-plug torque' : 'any';
}
