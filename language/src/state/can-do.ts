// What can be done at a place of the procedure: for each thing a verb acts on, whether its needs hold there, and how
// near it lies to the work just done. Completion asks it after `remove`, `install`, `torque`.
import { nameSpan, type Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import type { StatementLine } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Need } from '../vocabulary/needs.js';
import type { VerbDef } from '../vocabulary/verb.js';
import type { Act } from './act.js';
import type { Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { NEED_RULES } from './need-rules.js';
import type { StateRun } from './run.js';
import { lastActBefore } from './state-at.js';

export interface CanDo {
  readonly thing: Thing;
  /** What stands in the way; empty when it can be done now. */
  readonly lacks: readonly Lack[];
  /** Index of the last act on the thing or on what it is joined to; -1 when none: the higher, the nearer. */
  readonly near: number;
}

/**
 * The things a verb may act on just before `offset`, those that can be done now first, the nearest first among them.
 * Things that have nothing to do (a bolt that is on, after `install`) are left out.
 */
export function canDo(run: StateRun, offset: number, verb: VerbDef): CanDo[] {
  const then = run.machine.asAfter(lastActBefore(run, offset));
  return canDoOn(then, verb, then.job.universe.domain);
}

/** The same, asked of a machine. */
function canDoOn(m: Machine, verb: VerbDef, when: Condition): CanDo[] {
  const touched = touchedBy(m);
  const own = m.job.file.path;
  const found: CanDo[] = [];
  for (const thing of m.job.scope.names.values()) {
    if (!verb.on[thing.kind] || (thing.kind === 'machine' && verb.machines?.includes(thing.name) === false))
      continue;
    const inside = m.d.and(when, m.job.exists(thing));
    if (inside === NEVER || isDone(m, verb, thing, inside)) continue;
    found.push({ thing, lacks: lacksFor(m, verb, thing, inside), near: nearness(m, touched, thing) });
  }
  const blocked = (c: CanDo): number => (c.lacks.length > 0 ? 1 : 0);
  const away = (c: CanDo): number => (c.thing.file === own ? 0 : 1);
  const place = (c: CanDo): number => nameSpan(c.thing)?.start ?? -1;
  return found.sort(
    (a, b) => blocked(a) - blocked(b) || b.near - a.near || away(a) - away(b) || place(a) - place(b),
  );
}

/** What a verb would still need before it may act on the thing; empty when it may. */
export function lacksFor(m: Machine, verb: VerbDef, thing: Thing, when: Condition): Lack[] {
  const act = supposedAct(m, verb, when);
  return (verb.on[thing.kind]?.needs ?? []).flatMap((need) =>
    NEED_RULES[need](m, { act, thing, count: undefined, value: undefined, when }).filter(
      (l) => l.when !== NEVER,
    ),
  );
}

/** An act that has not been written yet. */
export function supposedAct(m: Machine, verb: VerbDef, when: Condition): Act {
  const at = { start: 0, end: 0 };
  const line: StatementLine = {
    kind: 'statement',
    ...at,
    firstLine: 0,
    lastLine: 0,
    indent: 0,
    depth: 0,
    code: at,
    colon: undefined,
    tokens: [],
    head: { ...at, text: verb.word },
    prose: undefined,
    children: [],
    broken: false,
    verb: { ...at, text: verb.word },
    items: [],
    clauses: [],
    guard: undefined,
  };
  const file = m.job.file.path;
  const statement: BoundStatement = {
    line,
    file,
    verb,
    objects: [],
    clauses: [],
    guard: undefined,
    clause: () => undefined,
    named: () => [],
  };
  return {
    index: m.acts.length,
    line,
    file,
    statement,
    when,
    step: undefined,
    following: [],
    through: undefined,
    blame: { file, span: at },
  };
}

/**
 * Whether the thing is already as the verb would leave it, everywhere asked about: then it is nothing to offer. Only
 * what the thing itself lacks counts, not what stands in its way.
 */
function isDone(m: Machine, verb: VerbDef, thing: Thing, when: Condition): boolean {
  const effect = verb.on[thing.kind];
  const act = supposedAct(m, verb, when);
  const own = (effect?.needs ?? [])
    .filter((need) => OWN_NEEDS.has(need))
    .flatMap((need) => NEED_RULES[need](m, { act, thing, count: undefined, value: undefined, when }));
  const missing = own.reduce<Condition>((c, l) => (l.thing === thing ? m.d.or(c, l.when) : c), NEVER);
  if (m.d.implies(when, missing)) return true;
  const tightens =
    effect?.makes.some((make) => make === 'torqued' || make === 'snug' || make === 'tight') ?? false;
  return tightens && thing.kind === 'fastener' && m.d.implies(when, m.where(thing, 'tight', isTorqued));
}

/** Needs that ask how the thing itself is, not what stands in its way. */
const OWN_NEEDS: ReadonlySet<Need> = new Set<Need>([
  'mounted',
  'hangable',
  'off',
  'some on',
  'some out',
  'none out',
  'tight enough',
  'away',
  'placed',
  'connected',
  'disconnected',
  'not connected',
  'capped',
  'chocked',
  'not chocked',
  'tagged',
  'tied',
  'up',
  'raised',
  'on ground',
]);

function isTorqued(value: string | number): boolean {
  return /^\d+ 0 0 0 0 /.test(String(value));
}

/** The last act on each thing. */
function touchedBy(m: Machine): ReadonlyMap<Thing, number> {
  const touched = new Map<Thing, number>();
  for (const [{ thing }, guarded] of m.cells()) {
    for (const choice of guarded) touched.set(thing, Math.max(touched.get(thing) ?? -1, choice.by));
  }
  return touched;
}

const JOINS = ['held by', 'clamped by', 'behind', 'in', 'on'] as const;

function nearness(m: Machine, touched: ReadonlyMap<Thing, number>, thing: Thing): number {
  let near = touched.get(thing) ?? -1;
  const see = (other: Thing): void => {
    near = Math.max(near, touched.get(other) ?? -1);
  };
  for (const word of JOINS) {
    for (const r of m.job.relations(thing, word)) see(r.target);
    for (const r of m.job.inverse(thing, word)) see(r.of);
  }
  return near;
}
