// After a lack: set what was needed and mark the whole joint, so that its later failures are silent. All of it holds on the
// combinations of the lack and of the relations followed, no further.
import { allThings, type Relation } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Deficit, Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { fastenerSlack, holds, lacksOf, notIn, notOff, notTorqued } from './relations.js';
import { assumeState, directionOf, type Want } from './wants.js';

/** A thing of the joint that is put right as well. */
interface Kin {
  readonly thing: Thing;
  readonly want: Want;
  readonly when: Condition;
}

export function assumeLack(m: Machine, lack: Lack, deficit: Deficit): void {
  const by = deficit.act?.index ?? m.acts.length;
  const joint = jointOf(m, lack);
  assumeState(m, lack.thing, lack.want, lack.when, lack.value, by);
  m.assume(lack.thing, lack.want, lack.when, deficit);
  for (const { thing, want, when } of joint) {
    if (!deficit.lacks.some((l) => l.thing === thing) && !deficit.also.has(thing))
      deficit.also.set(thing, want);
    assumeState(m, thing, want, when, undefined, by);
    m.assume(thing, want, when, deficit);
  }
}

/**
 * What is put right along with a thing. Together: what it holds and what holds it, what rides in it, what sits behind it.
 * Apart: what still holds and covers it. Only things that are not so already are named.
 */
function jointOf(m: Machine, lack: Lack): readonly Kin[] {
  const direction = directionOf(lack.want);
  if (
    direction === 'together' &&
    (lack.want === 'in' || lack.want === 'connected' || lack.want === 'torqued')
  )
    return fittedJoint(m, lack);
  if (direction === 'apart' && (lack.want === 'off' || lack.want === 'disconnected'))
    return openedJoint(m, lack);
  // In the air, ride height is a jack under the arm: it is taken away again.
  const suspension = lack.want === 'ride height' ? m.job.scope.resolve('suspension') : undefined;
  return suspension ? [{ thing: suspension, want: 'suspension loaded', when: lack.when }] : [];
}

/** Follows relations from thing to thing; each thing is taken once on each combination. */
class Search {
  readonly kin: Kin[] = [];
  readonly #m: Machine;
  readonly #seen = new Map<Thing, Condition>();
  readonly #queue: { thing: Thing; when: Condition }[];

  constructor(m: Machine, lack: Lack) {
    this.#m = m;
    this.#seen.set(lack.thing, lack.when);
    this.#queue = [{ thing: lack.thing, when: lack.when }];
  }

  next(): { thing: Thing; when: Condition } | undefined {
    return this.#queue.pop();
  }

  /** Takes lacks in where their thing has not been seen; `further` searches on from it. */
  add(lacks: readonly Pick<Lack, 'thing' | 'want' | 'when'>[], further: boolean): void {
    for (const { thing, want, when } of lacks) {
      const seen = this.#seen.get(thing) ?? NEVER;
      const fresh = this.#m.d.minus(when, seen);
      if (fresh === NEVER) continue;
      this.#seen.set(thing, this.#m.d.or(seen, fresh));
      this.kin.push({ thing, want, when: fresh });
      if (further) this.#queue.push({ thing, when: fresh });
    }
  }

  /** Where the thing is the start or has been taken in. */
  where(thing: Thing): Condition {
    return this.#seen.get(thing) ?? NEVER;
  }
}

function fittedJoint(m: Machine, lack: Lack): readonly Kin[] {
  const search = new Search(m, lack);
  for (let at = search.next(); at; at = search.next()) {
    const { thing, when } = at;
    for (const { target, where } of neighbours(m, thing)) {
      const inside = m.d.and(when, where);
      if (inside !== NEVER)
        search.add(
          target.kind === 'fastener' ? notTorqued(m, target, inside) : notIn(m, target, inside),
          true,
        );
    }
  }
  return search.kin;
}

function neighbours(m: Machine, thing: Thing): { target: Thing; where: Condition }[] {
  const to = (r: Relation): { target: Thing; where: Condition } => ({ target: r.target, where: r.when });
  const back = (r: Relation): { target: Thing; where: Condition } => ({ target: r.of, where: r.when });
  return [
    ...holds(m, thing).map(back),
    ...m.job.relations(thing, 'held by').map(to),
    ...m.job.relations(thing, 'clamped by').map(to),
    ...m.job.inverse(thing, 'in').map(back),
    ...(thing.kind === 'part'
      ? [...m.job.inverse(thing, 'behind'), ...m.job.inverse(thing, 'on')].map(back)
      : []),
  ].filter(
    ({ target }) => target.kind === 'part' || target.kind === 'fastener' || target.kind === 'connection',
  );
}

/** What has to come off with a thing: what holds and covers it, and other parts that the same fasteners alone hold. */
function openedJoint(m: Machine, lack: Lack): readonly Kin[] {
  const search = new Search(m, lack);
  let grown = true;
  while (grown) {
    for (let at = search.next(); at; at = search.next()) {
      const { thing, when } = at;
      const inside = (r: Relation): Condition => m.d.and(r.when, when);
      for (const r of m.job.relations(thing, 'held by'))
        if (r.target.kind !== 'condition') search.add(notOff(m, { ...r, count: undefined }, inside(r)), true);
      for (const r of m.job.relations(thing, 'clamped by'))
        search.add(
          lacksOf(m, r.target, 'tight', (v) => !fastenerSlack(v), 'slack', inside(r)),
          false,
        );
      for (const r of m.job.relations(thing, 'behind'))
        if (r.target.kind === 'part') search.add(notOff(m, r, inside(r)), true);
    }
    const before = search.kin.length;
    for (const fastener of [lack.thing, ...search.kin.map((k) => k.thing)].filter(
      (t) => t.kind === 'fastener',
    ))
      search.add(heldAlone(m, fastener, search), true);
    grown = search.kin.length > before;
  }
  return search.kin;
}

/** Parts that nothing but fasteners of the opened joint holds, where they are still on. */
function heldAlone(m: Machine, fastener: Thing, search: Search): Lack[] {
  return m.job
    .inverse(fastener, 'held by')
    .filter((r) => r.of.kind === 'part')
    .flatMap((r) => {
      const alone = m.job
        .relations(r.of, 'held by')
        .reduce(
          (c, h) => m.d.and(c, m.d.or(m.d.not(h.when), search.where(h.target))),
          m.d.and(r.when, search.where(fastener)),
        );
      return notOff(m, { target: r.of, count: undefined, value: undefined, when: alone }, alone);
    });
}

/** Mutes every declared thing named by words of a line that could not be read. */
export function muteNames(m: Machine, words: readonly string[], when: Condition): void {
  // `drain pan` may be `drain-pan`.
  const named = new Set([...words, ...words.slice(1).map((word, i) => `${words[i] ?? ''}-${word}`)]);
  for (const thing of allThings(m.job.scopes)) if (named.has(thing.name)) m.mute(thing, when);
}
