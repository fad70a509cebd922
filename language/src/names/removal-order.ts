// What must come off first: the order that the relations of things give, and the circles in which they give none.
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Job, Relation } from './job.js';
import { allThings } from './job.js';
import type { Thing } from './model.js';

/** One thing that must be off (slack, for a clamp) before another can come off. */
export interface Before {
  readonly thing: Thing;
  /** The thing that waits for it, and the relation that says so. */
  readonly of: Thing;
  readonly word: Relation['clause']['word'];
  /** The combinations it waits on. */
  readonly when: Condition;
  /** How many things lie between, from 0. */
  readonly depth: number;
}

/** Relations in which the second thing is out of the way before the first comes off. */
const FIRST_OFF = ['held by', 'clamped by', 'behind'] as const;

/**
 * All that must come off before a thing can, the nearest first, each once. Things that are in or on each other come
 * off together; a connection on the thing is disconnected first.
 */
export function removalOrder(job: Job, thing: Thing): Before[] {
  const d = job.universe.diagrams;
  const found: Before[] = [];
  const seen = new Set([thing]);
  let front: { thing: Thing; when: Condition }[] = [{ thing, when: job.exists(thing) }];
  for (let depth = 0; front.length > 0; depth++) {
    const next: typeof front = [];
    for (const { thing: of, when } of front) {
      for (const { word, target, when: on } of waitsFor(job, of)) {
        const both = d.and(when, d.and(on, job.exists(target)));
        if (both === NEVER || seen.has(target)) continue;
        seen.add(target);
        found.push({ thing: target, of, word, when: both, depth });
        next.push({ thing: target, when: both });
      }
    }
    front = next;
  }
  return found;
}

function waitsFor(job: Job, thing: Thing): { word: string; target: Thing; when: Condition }[] {
  const own = FIRST_OFF.flatMap((word) =>
    job.relations(thing, word).map(({ target, when }) => ({ word, target, when })),
  );
  const on = job.inverse(thing, 'on').filter(({ of }) => of.kind === 'connection');
  return [...own, ...on.map(({ of, when }) => ({ word: 'on', target: of, when }))].filter(
    ({ target }) => target.kind !== 'condition',
  );
}

/** Relations that lead from a thing back to itself, on combinations that they share. */
export type RelationCycle = readonly Relation[];

/** Families of relations that cannot lead back: what comes off first, what is in what, what sits on what. */
const FAMILIES: readonly (readonly string[])[] = [FIRST_OFF, ['in'], ['on']];

/**
 * The circles among relations, one for each knot of things, the shortest there is. In a catalogue, where options have no
 * meaning yet, relations with a guard are passed over.
 */
export function relationCycles(job: Job): RelationCycle[] {
  const all = allThings(job.scopes);
  return FAMILIES.flatMap((words) => {
    const edges = (thing: Thing): Relation[] =>
      words.flatMap((word) => job.relations(thing, word)).filter((r) => counts(job, r));
    // Most things have no such relation, or lead to none that has: no way through them leads back.
    const leads = (thing: Thing): boolean => words.some((word) => thing.clauses.has(word));
    const things = all.filter((thing) => leads(thing) && edges(thing).some(({ target }) => leads(target)));
    return knots(things, edges).flatMap((knot) => {
      const cycle = shortestCycle(job, knot, edges);
      return cycle ? [cycle] : [];
    });
  });
}

function counts(job: Job, { of, target, clause }: Relation): boolean {
  if (job.file.kind === 'procedure') return true;
  const guard = of.clauses.get(clause.word)?.find((own) => own.clause === clause)?.guard;
  return guard === undefined && of.exists.length === 0 && target.exists.length === 0;
}

/** Sets of things that all lead to each other (Tarjan's strongly connected components, without those of one thing that has no edge to itself). */
function knots(things: readonly Thing[], edges: (thing: Thing) => readonly Relation[]): ReadonlySet<Thing>[] {
  const index = new Map<Thing, number>();
  const low = new Map<Thing, number>();
  const stack: Thing[] = [];
  const open = new Set<Thing>();
  const found: ReadonlySet<Thing>[] = [];
  for (const root of things) {
    if (index.has(root)) continue;
    const work: { thing: Thing; out: readonly Relation[]; at: number }[] = [];
    const enter = (thing: Thing): void => {
      index.set(thing, index.size);
      low.set(thing, index.size - 1);
      stack.push(thing);
      open.add(thing);
      work.push({ thing, out: edges(thing), at: 0 });
    };
    const lower = (thing: Thing, to: number | undefined): void => {
      if (to !== undefined) low.set(thing, Math.min(low.get(thing) ?? to, to));
    };
    enter(root);
    for (let frame = work.at(-1); frame; frame = work.at(-1)) {
      const target = frame.out[frame.at]?.target;
      frame.at += 1;
      if (target) {
        if (!index.has(target)) enter(target);
        else if (open.has(target)) lower(frame.thing, index.get(target));
        continue;
      }
      work.pop();
      const above = work.at(-1);
      if (above) lower(above.thing, low.get(frame.thing));
      if (low.get(frame.thing) !== index.get(frame.thing)) continue;
      const knot = new Set(stack.splice(stack.indexOf(frame.thing)));
      for (const thing of knot) open.delete(thing);
      if (knot.size > 1 || frame.out.some((r) => r.target === frame.thing)) found.push(knot);
    }
  }
  return found;
}

/** Looks at ways of one relation, then two and so on; gives up where a knot has more ways than anyone could read. */
function shortestCycle(
  job: Job,
  knot: ReadonlySet<Thing>,
  edges: (thing: Thing) => readonly Relation[],
): RelationCycle | undefined {
  const d = job.universe.diagrams;
  let ways = [...knot].map((thing) => ({
    thing,
    start: thing,
    way: [] as Relation[],
    when: job.universe.domain,
  }));
  for (let length = 1; length <= knot.size && ways.length > 0 && ways.length < MOST_WAYS; length++) {
    const longer: typeof ways = [];
    for (const { thing, start, way, when } of ways) {
      for (const relation of edges(thing)) {
        const { target } = relation;
        const both = d.and(when, d.and(relation.when, job.exists(target)));
        if (both === NEVER || !knot.has(target)) continue;
        if (target === start) return [...way, relation];
        if (way.some((r) => r.target === target)) continue;
        longer.push({ thing: target, start, way: [...way, relation], when: both });
      }
    }
    ways = longer;
  }
  return undefined;
}

const MOST_WAYS = 5000;
