// Carries one statement out on the state: needs, what lacks, what is assumed, makes.
import type { Thing } from '../names/model.js';
import type { BoundItem } from '../names/statement.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { nearestName } from '../vocabulary/near.js';
import type { Effect } from '../vocabulary/verb.js';
import type { Act } from './act.js';
import { assumeLack } from './assume.js';
import type { Deficit, Lack } from './deficit.js';
import type { Machine } from './machine.js';
import { MAKE_RULES } from './make-rules.js';
import { type Asked, NEED_RULES } from './need-rules.js';
import { whenOf } from './relations.js';
import { directionOf, directionOfMake, MAKES_WANT, UNDOES, type Want } from './wants.js';

/** What a run gathers besides the state. */
export interface Gathered {
  readonly deficits: Deficit[];
  /** What broken house rules found lacking; they are told by their rule. */
  readonly ruled: Deficit[];
  /** Things used where they do not exist. */
  readonly absent: {
    readonly act: Act;
    readonly thing: Thing;
    readonly item: BoundItem;
    readonly when: Condition;
  }[];
}

/** What one statement has told so far: its deficits, and where each need had a lack. */
interface Own {
  readonly deficits: Deficit[];
  readonly told: Map<Deficit['need'], Condition>;
}

/** True when the statement had a lack of its own. */
export function applyStatement(m: Machine, act: Act, gathered: Gathered): boolean {
  const statement = act.statement;
  if (!statement) return false;
  const own: Own = { deficits: [], told: new Map() };
  muteNearMisses(m, act);
  noteAbsent(m, act, gathered);
  const objects = statement.objects.length > 0 ? statement.objects : [undefined];
  for (const object of objects) {
    const effect =
      object === undefined ? statement.verb.alone : object.thing && statement.verb.on[object.thing.kind];
    const thing = object?.thing ?? m.job.scope.resolve('vehicle');
    if (!effect || !thing) continue;
    const inside = m.d.and(act.when, m.job.exists(thing));
    if (inside === NEVER) continue;
    applyEffect(
      m,
      { act, thing, count: object?.count, value: object?.value, when: inside },
      effect,
      own,
      gathered,
    );
  }
  placedAids(m, act, own, gathered);
  gathered.deficits.push(...own.deficits);
  return own.told.size > 0;
}

/** A misspelt name is one finding of its own: what it was meant for is not judged from here on. */
function muteNearMisses(m: Machine, act: Act): void {
  for (const { thing, item } of act.statement?.objects ?? []) {
    if (thing) continue;
    for (const name of nearestName(item.name.text, m.job.scope.names.keys(), 1)) {
      const meant = m.job.scope.resolve(name);
      if (meant) m.mute(meant, act.when);
    }
  }
}

/** Notes the things that do not exist where the line is done. Nothing is told there of the bolts it names with them. */
function noteAbsent(m: Machine, act: Act, gathered: Gathered): void {
  const objects = act.statement?.objects ?? [];
  for (const item of objects) {
    const { thing } = item;
    const when = thing ? m.d.minus(act.when, m.job.exists(thing)) : NEVER;
    if (!thing || when === NEVER) continue;
    gathered.absent.push({ act, thing, item, when });
    for (const bolts of objects) if (bolts.thing?.kind === 'fastener') m.mute(bolts.thing, when);
  }
}

function applyEffect(m: Machine, asked: Asked, effect: Effect, own: Own, gathered: Gathered): void {
  const { act, thing, when } = asked;
  const late = arriveLate(m, asked, effect);
  const needing = m.d.minus(when, late);
  turnBack(m, thing, effect, needing);
  if (needing !== NEVER) {
    const inside = needing === when ? asked : { ...asked, when: needing };
    for (const need of effect.needs) {
      const found = NEED_RULES[need](m, inside);
      if (found.length === 0) continue;
      const lacks = found.filter((l) => l.when !== NEVER);
      if (lacks.length > 0) note(m, { act, need, about: thing }, lacks, own, gathered);
    }
  }
  for (const make of effect.makes) MAKE_RULES[make](m, asked);
}

/**
 * Notes what lacks and assumes it. On combinations where it follows from a lack that was noted before, or where this
 * statement has one already, it is assumed in silence.
 */
function note(m: Machine, asked: AskedOf, lacks: readonly Lack[], own: Own, gathered: Gathered): void {
  const { need, about } = asked;
  // What a drive asks of the whole vehicle is told where each thing was left so: a pan beside a plug that is missing.
  const isWhole = asked.act.statement?.verb.wholeVehicle === true;
  const told = (isWhole ? [] : [...own.told])
    .filter(([n]) => n !== need)
    .reduce((c, [, when]) => m.d.or(c, when), NEVER as Condition);
  const fresh: Lack[] = [];
  const assumed: { lack: Lack; deficit: Deficit }[] = [];
  const silent = deficitOf(asked, true);
  // All lacks are sorted out before any is assumed: what one assumes must not hide another of the same act.
  for (const lack of lacks) {
    const quiet = m.d.or(told, followsFrom(m, lack));
    const [inside, outside] = [m.d.and(lack.when, quiet), m.d.minus(lack.when, quiet)];
    if (inside !== NEVER) assumed.push({ lack: { ...lack, when: inside }, deficit: silent });
    if (outside === NEVER) continue;
    own.told.set(need, m.d.or(own.told.get(need) ?? NEVER, outside));
    const rest = { ...lack, when: outside };
    const earlier = earlierWith(m, need, lack, gathered);
    if (earlier) {
      earlier.lacks.push(rest);
      assumed.push({ lack: rest, deficit: earlier });
    } else fresh.push(rest);
  }
  if (fresh.length > 0) {
    const same = own.deficits.find((d) => d.need === need);
    const deficit = same ?? deficitOf(asked, false);
    if (same && !same.about.includes(about)) same.about.push(about);
    deficit.lacks.push(...fresh);
    if (!same) own.deficits.push(deficit);
    assumed.push(...fresh.map((lack) => ({ lack, deficit })));
  }
  for (const { lack, deficit } of assumed) assumeLack(m, lack, deficit);
}

/** Which need an act asked of which thing. */
interface AskedOf {
  readonly act: Act;
  readonly need: Deficit['need'];
  readonly about: Thing;
}

function deficitOf({ act, need, about }: AskedOf, silent: boolean): Deficit {
  return { act, need, about: [about], lacks: [], silent, also: new Map(), late: [], arrived: new Map() };
}

/**
 * Where the thing is already in an assumed state that goes the same way. A cover that was only in the way never came off:
 * nothing is owed for putting it back.
 */
function followsFrom(m: Machine, lack: Lack): Condition {
  const way = directionOf(lack.want);
  if (way === 'here') return m.assumedWhere(lack.thing);
  return whenOf(
    m,
    m
      .assumptions(lack.thing)
      .filter(
        (a) => directionOf(a.want) === way || (a.deficit.need === 'reachable' && isOf(a.deficit, lack)),
      ),
  );
}

/** Whether the lack is left by the act that the deficit is of. */
const isOf = ({ act }: Deficit, { maker }: Lack): boolean => act?.index === maker;

/** Where the same lack of the same making was noted on other combinations: its finding then takes these in. */
function earlierWith(m: Machine, need: Deficit['need'], lack: Lack, gathered: Gathered): Deficit | undefined {
  // One wait lacks before two blocks, each for vehicles of its own.
  if (lack.want === 'cured' || lack.want === 'settled')
    return gathered.deficits.find(
      (d) =>
        d.need === need &&
        d.lacks.length > 0 &&
        d.lacks.every(
          (l) =>
            l.thing === lack.thing &&
            l.maker === lack.maker &&
            l.value === lack.value &&
            m.d.and(l.when, lack.when) === NEVER,
        ),
    );
  if (directionOf(lack.want) === 'here') return undefined;
  const same = (l: Lack): boolean =>
    l.thing === lack.thing && isSame(l.want, lack.want) && l.maker === lack.maker;
  return (
    gathered.deficits.find((d) => !d.silent && d.lacks.some(same)) ??
    gathered.ruled.find((d) => d.lacks.some(same))
  );
}

/** An act that brings about what was assumed before: it only came late, and what it needs is not asked again. Gives where. */
function arriveLate(m: Machine, asked: Asked, effect: Effect): Condition {
  let late: Condition = NEVER;
  const assumed = m.assumptions(asked.thing);
  if (assumed.length === 0) return late;
  const wants = effect.makes.flatMap((make) => MAKES_WANT[make] ?? []);
  for (const { deficit, want, when } of assumed) {
    const at = m.d.and(when, asked.when);
    if (at === NEVER || !wants.includes(want)) continue;
    // Of one line, only what is put on in the wrong order comes late: `install trim, mirror`.
    if (deficit.act === asked.act && directionOf(want) !== 'together') continue;
    const lacked = deficit.lacks.some((l) => l.thing === asked.thing);
    if (lacked && !deficit.late.includes(asked.act)) deficit.late.push(asked.act);
    deficit.arrived.set(asked.thing, m.d.or(deficit.arrived.get(asked.thing) ?? NEVER, at));
    late = m.d.or(late, at);
  }
  return late;
}

/** An act that goes the other way makes what was assumed a thing of the past. */
function turnBack(m: Machine, thing: Thing, effect: Effect, when: Condition): void {
  if (m.assumptions(thing).length === 0) return;
  const directions = new Set(effect.makes.map(directionOfMake));
  const undone = new Set(effect.makes.map((make) => UNDOES[make]));
  m.clearAssumptions(
    thing,
    when,
    (want) => undone.has(want) || directions.has(directionOf(want) === 'together' ? 'apart' : 'together'),
  );
}

const AIDED_BY = ['with', 'into'];

/** A temporary thing named with `with` or `into` must be placed. */
function placedAids(m: Machine, act: Act, own: Own, gathered: Gathered): void {
  for (const clause of AIDED_BY) {
    if (!act.statement?.clause(clause)) continue;
    for (const { thing } of act.statement.named(clause)) {
      if (thing?.kind !== 'temporary') continue;
      const lacks = NEED_RULES.placed(m, {
        act,
        thing,
        count: undefined,
        value: undefined,
        when: m.d.and(act.when, m.job.exists(thing)),
      });
      if (lacks.length > 0) note(m, { act, need: 'placed', about: thing }, lacks, own, gathered);
    }
  }
}

/** A connection that should be off and one that should be disconnected lack the same. */
function isSame(a: Want, b: Want): boolean {
  const plain = (want: Want): Want => (want === 'disconnected' ? 'off' : want);
  return plain(a) === plain(b);
}
