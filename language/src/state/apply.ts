// Carries one statement out on the state: needs, what lacks, what is assumed, makes.
import type { Thing } from '../names/model.js';
import type { BoundItem } from '../names/statement.js';
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
  /** Things used where they do not exist. */
  readonly absent: { readonly act: Act; readonly thing: Thing; readonly item: BoundItem; readonly when: Condition }[];
}

/** True when the statement had a lack of its own. */
export function applyStatement(m: Machine, act: Act, gathered: Gathered): boolean {
  const statement = act.statement;
  if (!statement) return false;
  const statementDeficits: Deficit[] = [];
  const objects = statement.objects.length > 0 ? statement.objects : [undefined];
  for (const object of objects) {
    const effect = object === undefined ? statement.verb.alone : object.thing && statement.verb.on[object.thing.kind];
    const thing = object?.thing ?? m.job.scope.resolve('vehicle');
    if (!effect || !thing) continue;
    const inside = existing(m, act, thing, object, gathered);
    if (inside === NEVER) continue;
    applyEffect(m, { act, thing, count: object?.count, value: object?.value, when: inside }, effect, statementDeficits);
  }
  placedAids(m, act, statementDeficits);
  gathered.deficits.push(...statementDeficits);
  return statementDeficits.some((d) => !d.silent);
}

function existing(m: Machine, act: Act, thing: Thing, item: BoundItem | undefined, gathered: Gathered): Condition {
  const absent = m.d.minus(act.when, m.job.exists(thing));
  if (absent !== NEVER && item) gathered.absent.push({ act, thing, item, when: absent });
  return m.d.and(act.when, m.job.exists(thing));
}

function applyEffect(m: Machine, asked: Asked, effect: Effect, deficits: Deficit[]): void {
  const { act, thing } = asked;
  const late = arriveLate(m, asked, effect);
  const when = m.d.minus(asked.when, late);
  turnBack(m, thing, effect, when);
  if (when === NEVER) return;
  for (const need of effect.needs) {
    const lacks = NEED_RULES[need](m, { ...asked, when }).filter((l) => l.when !== NEVER);
    if (lacks.length === 0) continue;
    const same = deficits.find((d) => d.need === need);
    const deficit: Deficit = same ?? { act, need, lacks: [], silent: deficits.length > 0, also: new Set(), late: [], arrived: new Set() };
    deficit.lacks.push(...lacks);
    if (!same) deficits.push(deficit);
    for (const lack of lacks) assumeLack(m, lack, deficit);
  }
  for (const make of effect.makes) MAKE_RULES[make](m, { ...asked, when });
}

/** An act that brings about what was assumed before: it only came late. Gives where. */
function arriveLate(m: Machine, asked: Asked, effect: Effect): Condition {
  let late: Condition = NEVER;
  const wants = effect.makes.flatMap((make) => MAKES_WANT[make] ?? []);
  for (const assumption of m.assumptions(asked.thing)) {
    const at = m.d.and(assumption.when, asked.when);
    if (at === NEVER || !wants.includes(assumption.want)) continue;
    assumption.deficit.late.push(asked.act);
    assumption.deficit.arrived.add(asked.thing);
    late = m.d.or(late, at);
  }
  if (late !== NEVER) m.clearAssumptions(asked.thing, late);
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
function placedAids(m: Machine, act: Act, deficits: Deficit[]): void {
  for (const clause of ['with', 'into']) {
    for (const { thing } of act.statement?.named(clause) ?? []) {
      if (thing?.kind !== 'temporary') continue;
      const lacks: Lack[] = [...NEED_RULES.placed(m, { act, thing, count: undefined, value: undefined, when: m.d.and(act.when, m.job.exists(thing)) })];
      if (lacks.length === 0) continue;
      const deficit: Deficit = { act, need: 'placed', lacks, silent: deficits.length > 0, also: new Set(), late: [], arrived: new Set() };
      deficits.push(deficit);
      for (const lack of lacks) assumeLack(m, lack, deficit);
    }
  }
}
