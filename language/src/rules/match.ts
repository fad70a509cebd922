// Whether an act is what a rule looks for, and which of its things it is about.
import { massOf } from '../names/figures.js';
import type { Thing } from '../names/model.js';
import { numberOf } from '../quantity/index.js';
import type { Act } from '../state/act.js';
import type { EventPattern, MeasureNode } from '../syntax/tree.js';
import { SIGNALS, type Signal } from '../vocabulary/signals.js';

/** The word that stands for every kind in `any thing marked fuel`. */
export const ANY_KIND = 'thing';

/** The things of the act that the pattern is about; undefined when it is not such an act. */
export function matchAct(
  pattern: EventPattern,
  act: Act,
  it: Thing | undefined,
): readonly Thing[] | undefined {
  const { statement } = act;
  if (!statement || !pattern.verbs.some((v) => v.text === statement.verb.word)) return undefined;
  const things = statement.objects.map((o) => o.thing).filter((t) => t !== undefined);
  const values = statement.objects.map((o) => o.value);
  if (pattern.value && !values.includes(pattern.value.text)) return undefined;
  for (const clause of pattern.clauses) {
    if (
      !clause.items.every((i) => statement.named(clause.word).some((n) => n.item.name.text === i.name.text))
    )
      return undefined;
  }
  const { target } = pattern;
  if (!target) return things;
  const matching = things.filter((t) => isTarget(target, t, it));
  return matching.length > 0 ? matching : undefined;
}

/** Whether an act with a name that is not declared may be what a rule asks for: it then counts as done. */
export function mayMatch(pattern: EventPattern, act: Act): boolean {
  const { statement } = act;
  return (
    statement !== undefined &&
    pattern.verbs.some((v) => v.text === statement.verb.word) &&
    statement.objects.some((o) => o.thing === undefined)
  );
}

export function isTarget(
  target: NonNullable<EventPattern['target']>,
  thing: Thing,
  it: Thing | undefined,
): boolean {
  switch (target.form) {
    case 'it':
      return thing === it;
    case 'vehicle':
      return thing.name === 'vehicle';
    case 'names':
      return target.names.some((n) => n.text === thing.name);
    case 'any':
      return (
        (thing.kind === target.kind.text || target.kind.text === ANY_KIND) &&
        (!target.mark || thing.marks.includes(target.mark.text)) &&
        (!target.over || heavier(thing, target.over))
      );
  }
}

function heavier(thing: Thing, over: MeasureNode): boolean {
  const mass = massOf(thing);
  const m = over.measure;
  if (mass === undefined || !m || m.form === 'range') return false;
  return mass > numberOf(m.value.mul(m.unit.factor));
}

/** Whether a message line is at least as grave as the one asked for; a hold only answers for a hold. */
export function answersMessage(act: Act, wanted: Signal | 'hold'): boolean {
  if (wanted === 'hold') return act.line.kind === 'text' && act.line.word === 'hold';
  return act.line.kind === 'message' && SIGNALS.indexOf(act.line.signal) <= SIGNALS.indexOf(wanted);
}
