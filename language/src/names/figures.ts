// Figures of a thing, read from its clauses: count, head, thread, torque, mass. Written values, with their guards.
import { numberOf } from '../quantity/index.js';
import type { Guard, MeasureNode, Raw, SpecNode } from '../syntax/tree.js';
import { timeText } from '../trade/time.js';
import { isBareBolt } from '../vocabulary/formless.js';
import { clausesOf, hasClause, type Thing, type ThingClause } from './model.js';

/** Number of fasteners in the set, 1 when it is not written or a hole. */
export function tighteningCount(thing: Thing): number {
  const count = clausesOf(thing, 'of')[0]?.clause.count?.value;
  const n = count === undefined ? 1 : Math.floor(numberOf(count));
  return n >= 1 && n <= 10_000 ? n : 1;
}

/** Whether the count is written as a figure. */
export function countKnown(thing: Thing): boolean {
  return clausesOf(thing, 'of')[0]?.clause.count?.value !== undefined;
}

/** What stands after `of`: a thread, or the word for a retainer without one. */
export function threadText(thing: Thing): Raw | undefined {
  return clausesOf(thing, 'of')[0]?.clause.raw;
}

/** A retainer without a thread: a clip, a pin, or another word of the shop that names no bolt. Every thread has a figure in it. */
export function isThreadless(thing: Thing): boolean {
  const text = threadText(thing)?.text;
  return text !== undefined && text !== '' && text !== '?' && !/\d/.test(text) && !isBareBolt(text);
}

/** A retainer without thread and without a torque: it holds as soon as it is on. */
export function isFormless(thing: Thing): boolean {
  return isThreadless(thing) && !hasClause(thing, 'torque');
}

/** A torque line of a fastener: the value with the guard it holds under and the sheet it comes from. */
export interface TorqueLine {
  readonly spec: SpecNode | undefined;
  readonly per: Raw | undefined;
  readonly guard: Guard | undefined;
  readonly at: ThingClause;
}

export function torqueLines(thing: Thing): readonly TorqueLine[] {
  return clausesOf(thing, 'torque').map((at) => ({
    spec: at.clause.spec,
    per: at.line.clauses.find((c) => c.word === 'per')?.raw,
    guard: at.guard,
    at,
  }));
}

/** Number of stages of the longest torque line; 1 when there is none. */
export function stageCount(thing: Thing): number {
  return Math.max(1, ...torqueLines(thing).map((t) => t.spec?.stages.length ?? 1));
}

/** A time clause in minutes, undefined when absent, a hole or not a time. */
export function minutesOf(thing: Thing, word: string): number | undefined {
  return minutes(clausesOf(thing, word)[0]?.clause.spec?.stages[0]?.measure);
}

/** A written time in minutes. */
export function minutes(measure: MeasureNode | undefined): number | undefined {
  const m = measure?.measure;
  if (m?.unit.kind !== 'time') return undefined;
  const value = m.form === 'range' ? m.low : m.value;
  return numberOf(value.mul(m.unit.factor)) / 60;
}

/** A time of an hour or more as hours and minutes: `1 h 30 min` for `90 min`. Undefined where it is written so. */
export function hoursOf(measure: MeasureNode | undefined): string | undefined {
  const amount = measure?.measure;
  const total = minutes(measure);
  if (amount?.form !== 'amount' || amount.plus || amount.minus || total === undefined || total < 60)
    return undefined;
  const { unit } = amount;
  const isWhole = Number.isInteger(total / 60) && numberOf(unit.factor) === 3600;
  return isWhole || measure?.amounts.length !== 1 || !Number.isInteger(total) ? undefined : timeText(total);
}

/** Mass in kilograms, undefined when it is not written. */
export function massOf(thing: Thing): number | undefined {
  const m = clausesOf(thing, 'mass')[0]?.clause.spec?.stages[0]?.measure.measure;
  if (m?.unit.kind !== 'mass' || m.form === 'range') return undefined;
  return numberOf(m.value.mul(m.unit.factor));
}
