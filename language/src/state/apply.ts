// Carries one statement out on the state: needs, what lacks, what is assumed, makes.
import type { Thing } from '../names/model.js';
import type { BoundItem } from '../names/statement.js';
import { nearest } from '../vocabulary/near.js';
import type { Effect } from '../vocabulary/verb.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Act } from './act.js';
import { assumeLack } from './assume.js';
import type { Deficit, Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { MAKE_RULES } from './make-rules.js';
import { type Asked, NEED_RULES } from './need-rules.js';
import { directionOf, directionOfMake, MAKES_WANT } from './wants.js';

/** What a run gathers besides the state. */
export interface Gathered {
  readonly deficits: Deficit[];
  /** What broken house rules found lacking; they are told by their rule. */
  readonly ruled: Deficit[];
  /** Things used where they do not exist. */
  readonly absent: { readonly act: Act; readonly thing: Thing; readonly item: BoundItem; readonly when: Condition }[];
}

/** True when the statement had a lack of its own. */
export function applyStatement(m: Machine, act: Act, gathered: Gathered): boolean {
  const statement = act.statement;
  if (!statement) return false;
  const statementDeficits: Deficit[] = [];
  muteNearMisses(m, act);
  const objects = statement.objects.length > 0 ? statement.objects : [undefined];
  for (const object of objects) {
    const effect = object === undefined ? statement.verb.alone : object.thing && statement.verb.on[object.thing.kind];
    const thing = object?.thing ?? m.job.scope.resolve('vehicle');
    if (!effect || !thing) continue;
    const inside = existing(m, act, thing, object, gathered);
    if (inside === NEVER) continue;
    applyEffect(m, { act, thing, count: object?.count, value: object?.value, when: inside }, effect, statementDeficits, gathered);
  }
  placedAids(m, act, statementDeficits, gathered);
  gathered.deficits.push(...statementDeficits);
  return statementDeficits.some((d) => !d.silent);
}

/** A misspelt name is one finding of its own: what it was meant for is not judged from here on. */
function muteNearMisses(m: Machine, act: Act): void {
  for (const { thing, item } of act.statement?.objects ?? []) {
    if (thing) continue;
    for (const name of nearest(item.name.text, m.job.scope.names.keys(), 1)) {
      const meant = m.job.scope.resolve(name);
      if (meant) m.mute(meant, act.when);
    }
  }
}

function existing(m: Machine, act: Act, thing: Thing, item: BoundItem | undefined, gathered: Gathered): Condition {
  const absent = m.d.minus(act.when, m.job.exists(thing));
  if (absent !== NEVER && item) gathered.absent.push({ act, thing, item, when: absent });
  return m.d.and(act.when, m.job.exists(thing));
}

function applyEffect(m: Machine, asked: Asked, effect: Effect, deficits: Deficit[], gathered: Gathered): void {
  const { act, thing, when } = asked;
  const late = arriveLate(m, asked, effect);
  const needing = m.d.minus(when, late);
  turnBack(m, thing, effect, needing);
  if (needing !== NEVER) {
    for (const need of effect.needs) {
      const lacks = NEED_RULES[need](m, { ...asked, when: needing }).filter((l) => l.when !== NEVER);
      if (lacks.length > 0) note(m, { act, need, about: thing }, lacks, deficits, gathered);
    }
  }
  for (const make of effect.makes) MAKE_RULES[make](m, asked);
}

/** Notes what lacks and assumes it. What follows from a lack that was noted before is assumed in silence. */
function note(m: Machine, { act, need, about }: { act: Act; need: Deficit['need']; about: Thing }, lacks: readonly Lack[], deficits: Deficit[], gathered: Gathered): void {
  const fresh = lacks.filter((l) => !followsFromAnother(m, l, gathered));
  const silent: Deficit = { act, need, about: [], lacks: [], silent: true, also: new Map(), late: [], arrived: new Map() };
  for (const lack of lacks) if (!fresh.includes(lack)) assumeLack(m, lack, silent);
  if (fresh.length === 0) return;
  const same = deficits.find((d) => d.need === need);
  const deficit: Deficit = same ?? { act, need, about: [], lacks: [], silent: deficits.length > 0, also: new Map(), late: [], arrived: new Map() };
  deficit.lacks.push(...fresh);
  if (!deficit.about.includes(about)) deficit.about.push(about);
  if (!same) deficits.push(deficit);
  for (const lack of fresh) assumeLack(m, lack, deficit);
}

/**
 * Whether a lack has the cause of an earlier one: the thing is already in an assumed state that goes the same way, or
 * the same lack of the same making was noted on other combinations, whose finding then takes these in.
 */
function followsFromAnother(m: Machine, lack: Lack, gathered: Gathered): boolean {
  const way = directionOf(lack.want);
  const assumed = m.assumptions(lack.thing).filter((a) => directionOf(a.want) === way).reduce((c, a) => m.d.or(c, a.when), NEVER as Condition);
  if (m.d.implies(lack.when, way === 'here' ? m.assumedWhere(lack.thing) : assumed)) return true;
  const earlier = [...gathered.deficits, ...gathered.ruled].find((d) => d.lacks.some((l) => l.thing === lack.thing && l.want === lack.want && l.maker === lack.maker));
  if (!earlier || way === 'here') return false;
  earlier.lacks.push(lack);
  return true;
}

/** An act that brings about what was assumed before: it only came late, and what it needs is not asked again. Gives where. */
function arriveLate(m: Machine, asked: Asked, effect: Effect): Condition {
  let late: Condition = NEVER;
  const wants = effect.makes.flatMap((make) => MAKES_WANT[make] ?? []);
  for (const { deficit, want, when } of m.assumptions(asked.thing)) {
    const at = m.d.and(when, asked.when);
    if (at === NEVER || deficit.act === asked.act || !wants.includes(want)) continue;
    if (!deficit.late.includes(asked.act)) deficit.late.push(asked.act);
    deficit.arrived.set(asked.thing, m.d.or(deficit.arrived.get(asked.thing) ?? NEVER, at));
    late = m.d.or(late, at);
  }
  return late;
}

/** An act that goes the other way makes what was assumed a thing of the past. */
function turnBack(m: Machine, thing: Thing, effect: Effect, when: Condition): void {
  const directions = new Set(effect.makes.map(directionOfMake));
  for (const assumption of m.assumptions(thing)) {
    const opposite = directionOf(assumption.want) === 'together' ? 'apart' : 'together';
    if (directions.has(opposite)) m.clearAssumptions(thing, when);
  }
}

/** A temporary thing named with `with` or `into` must be placed. */
function placedAids(m: Machine, act: Act, deficits: Deficit[], gathered: Gathered): void {
  for (const clause of ['with', 'into']) {
    for (const { thing } of act.statement?.named(clause) ?? []) {
      if (thing?.kind !== 'temporary') continue;
      const lacks: Lack[] = [...NEED_RULES.placed(m, { act, thing, count: undefined, value: undefined, when: m.d.and(act.when, m.job.exists(thing)) })];
      if (lacks.length > 0) note(m, { act, need: 'placed', about: thing }, lacks, deficits, gathered);
    }
  }
}
