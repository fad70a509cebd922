// Conditions that follow from relations between things: off, slack, free, reachable.
import type { Relation } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { decode, size } from './counts.js';
import type { Lack } from './deficit.js';
import type { Choice } from './guarded.js';
import type { Machine } from './machine.js';
import type { Want } from './wants.js';

/** Where the aspect of a thing has a bad value inside `when`, one lack for each act that made it so. */
export function lacksOf(
  m: Machine,
  thing: Thing,
  aspect: Parameters<Machine['read']>[1],
  bad: (value: string) => boolean,
  want: Want,
  when: Condition,
  value?: string,
): readonly Lack[] {
  const inside = m.d.minus(m.d.and(when, m.job.exists(thing)), m.muted(thing));
  if (inside === NEVER) return NO_LACKS;
  // Nearly every question finds nothing.
  let lacks: Lack[] | undefined;
  for (const choice of m.read(thing, aspect)) {
    if (!bad(String(choice.value))) continue;
    const at = m.d.and(choice.when, inside);
    if (at === NEVER) continue;
    lacks ??= [];
    lacks.push({ thing, want, when: at, maker: choice.by, ...(value === undefined ? {} : { value }) });
  }
  return lacks ?? NO_LACKS;
}

export const NO_LACKS: readonly Lack[] = [];

/** What lacks by any of some relations. Most things have none of most kinds. */
export function lacksBy(
  relations: readonly Relation[],
  lacks: (r: Relation) => readonly Lack[],
): readonly Lack[] {
  return relations.length === 0 ? NO_LACKS : relations.flatMap(lacks);
}

/** Both lists of lacks in one. */
export function both(one: readonly Lack[], other: readonly Lack[]): readonly Lack[] {
  if (one.length === 0) return other;
  return other.length === 0 ? one : [...one, ...other];
}

/** Whether a fastener counts as off: all of it out, or as many as the relation names. */
function fastenerOff(word: string, count: number | undefined): boolean {
  const c = decode(word);
  return count === undefined ? c.out === size(c) : c.out >= Math.min(count, size(c));
}

/** Whether a fastener clamps nothing: none torqued, snug or merely untouched. */
export function fastenerSlack(word: string): boolean {
  const c = decode(word);
  return c.torqued + c.snug === 0;
}

/** Lacks of a target that should be off. */
export function notOff(
  m: Machine,
  relation: Pick<Relation, 'target' | 'count' | 'value' | 'when'>,
  when: Condition,
): readonly Lack[] {
  const { target } = relation;
  const at = m.d.and(when, relation.when);
  switch (target.kind) {
    case 'part':
      return lacksOf(m, target, 'place', (v) => v === 'in', 'off', at);
    case 'fastener':
      return lacksOf(m, target, 'tight', (v) => !fastenerOff(v, relation.count), 'off', at);
    case 'connection':
      return lacksOf(m, target, 'link', (v) => v === 'connected', 'off', at);
    case 'temporary':
      return lacksOf(m, target, 'put', (v) => v === 'placed', 'off', at);
    case 'condition':
      return lacksOf(
        m,
        target,
        'value',
        (v) => v === (relation.value ?? target.values[0]?.text),
        'set',
        at,
        otherValue(target, relation.value),
      );
    default:
      return NO_LACKS;
  }
}

function otherValue(condition: Thing, value: string | undefined): string {
  const avoid = value ?? condition.values[0]?.text;
  return condition.values.find((v) => v.text !== avoid)?.text ?? '';
}

/** What still holds or clamps the thing. */
export function heldBy(m: Machine, thing: Thing, when: Condition): readonly Lack[] {
  return both(
    lacksBy(m.job.relations(thing, 'held by'), (r) => notOff(m, r, when)),
    lacksBy(m.job.relations(thing, 'clamped by'), (r) =>
      lacksOf(m, r.target, 'tight', (v) => !fastenerSlack(v), 'slack', m.d.and(when, r.when)),
    ),
  );
}

/** What still covers the thing. A thing that rides in a part that is off is reachable whatever covered the part. */
export function coveredBy(m: Machine, thing: Thing, when: Condition): readonly Lack[] {
  return lacksBy(m.job.relations(thing, 'behind'), (r) => notOff(m, r, when));
}

/** What is not in place although this fastener or connection holds or closes it. */
export function notIn(m: Machine, thing: Thing, when: Condition): readonly Lack[] {
  if (thing.kind === 'part') return lacksOf(m, thing, 'place', (v) => v !== 'in', 'in', when);
  if (thing.kind === 'fastener') return lacksOf(m, thing, 'tight', (v) => decode(v).out > 0, 'in', when);
  if (thing.kind === 'connection')
    return lacksOf(m, thing, 'link', (v) => v !== 'connected', 'connected', when);
  return NO_LACKS;
}

/** Fasteners that are in but not torqued, or out. */
export function notTorqued(m: Machine, thing: Thing, when: Condition): readonly Lack[] {
  if (thing.kind !== 'fastener') return notIn(m, thing, when);
  return both(notIn(m, thing, when), inNotTorqued(m, thing, when));
}

/** Fasteners that are all in but not torqued; a hand-tight set is as it should be once none is loose. */
export function inNotTorqued(m: Machine, fastener: Thing, when: Condition): readonly Lack[] {
  const handTight = fastener.clauses.has('no torque');
  return lacksOf(
    m,
    fastener,
    'tight',
    (v) => {
      const c = decode(v);
      return c.out === 0 && c.torqued !== size(c) && !(handTight && c.loose === 0);
    },
    'torqued',
    when,
  );
}

/** The things this fastener or connection keeps in place. */
export function holds(m: Machine, thing: Thing): readonly Relation[] {
  const held = m.job.inverse(thing, 'held by');
  const clamped = m.job.inverse(thing, 'clamped by');
  return clamped.length === 0 ? held : [...held, ...clamped];
}

/** All of a closed joint: the part with its holders torqued, or the fastener or connection itself. */
export function notClosed(m: Machine, thing: Thing, when: Condition): readonly Lack[] {
  const own = notTorqued(m, thing, when);
  const holders = [...m.job.relations(thing, 'held by'), ...m.job.relations(thing, 'clamped by')]
    .filter((r) => r.target.kind === 'fastener')
    .flatMap((r) => notTorqued(m, r.target, m.d.and(when, r.when)));
  return [...own, ...holders];
}

/** Union of the conditions of lacks. */
export function whenOf(m: Machine, lacks: readonly Pick<Choice, 'when'>[]): Condition {
  return lacks.reduce((c, l) => m.d.or(c, l.when), NEVER);
}
