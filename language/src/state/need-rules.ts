// How each need of the vocabulary is asked of the state. A rule gives what lacks; an empty list means proven.
import { minutesOf, torqueLines } from '../names/figures.js';
import { hasClause, type Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Need } from '../vocabulary/needs.js';
import type { Act } from './act.js';
import { decode, size } from './counts.js';
import type { Lack } from './deficit.js';
import { facesOf, joinsAt, sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import {
  both,
  coveredBy,
  fastenerSlack,
  heldBy,
  holds,
  lacksBy,
  lacksOf,
  NO_LACKS,
  notClosed,
  notIn,
  notOff,
} from './relations.js';
import { wholeLacks } from './whole.js';

/** What a need is asked about. */
export interface Asked {
  readonly act: Act;
  readonly thing: Thing;
  /** `8 of` in the statement; undefined means all. */
  readonly count: number | undefined;
  /** The value after the object, as in `set selector park`. */
  readonly value: string | undefined;
  /** Where it is asked. */
  readonly when: Condition;
}

type NeedRule = (m: Machine, asked: Asked) => readonly Lack[];

const vehicleOf = (m: Machine): Thing => m.job.scope.resolve('vehicle') as Thing;
const suspensionOf = (m: Machine): Thing => m.job.scope.resolve('suspension') as Thing;

const isObject = ({ statement }: Act, thing: Thing): boolean =>
  statement?.objects.some((o) => o.thing === thing) ?? false;
const looks = (act: Act): boolean => act.statement?.verb.judges === 'by looking';
const runs = (act: Act): boolean => act.statement?.verb.on.machine?.makes.includes('fluids moved') ?? false;

const posture =
  (bad: readonly string[], want: Lack['want']): NeedRule =>
  (m, { when }) =>
    lacksOf(m, vehicleOf(m), 'posture', (v) => bad.includes(v), want, when);

export const NEED_RULES: Readonly<Record<Need, NeedRule>> = {
  mounted: (m, { thing, when }) => lacksOf(m, thing, 'place', (v) => v === 'out', 'mounted', when),
  hangable: (m, { thing, when }) => lacksOf(m, thing, 'place', (v) => v === 'hung', 'mounted', when),
  off: (m, { thing, when }) => lacksOf(m, thing, 'place', (v) => v === 'in', 'off', when),
  free: (m, { thing, when }) => heldBy(m, thing, when),
  // After the engine has run, a look for leaks is a look from outside with everything on.
  reachable: (m, { act, thing, when }) => (looks(act) && m.acts.some(runs) ? [] : coveredBy(m, thing, when)),
  'nothing connected': (m, { act, thing, when }) => {
    const on = m.job.inverse(thing, 'on');
    if (on.length === 0) return NO_LACKS;
    const at = m.d.minus(when, nextMakes(m, act, thing, 'hung', when));
    return lacksBy(on, ({ of, when: on }) =>
      of.kind === 'connection'
        ? notOff(m, { target: of, count: undefined, value: undefined, when: on }, at)
        : NO_LACKS,
    );
  },
  'nothing spills': (m, { thing, when }) => {
    const undrained = (fluid: Thing): readonly Lack[] =>
      lacksOf(m, fluid, 'level', (v) => v === 'full' || v === 'unchecked', 'drained', when);
    return both(
      lacksBy(m.job.inverse(thing, 'drain at'), (r) => undrained(r.of)),
      lacksBy(m.job.relations(thing, 'closes'), (r) => undrained(r.target)),
    );
  },
  'tight enough': (m, { thing, count, when }) =>
    lacksOf(
      m,
      thing,
      'tight',
      (v) => {
        const c = decode(v);
        return count === undefined
          ? c.torqued + c.snug + c.started === 0
          : c.torqued + c.snug + c.started < count;
      },
      'tight',
      when,
    ),
  'some on': (m, { thing, count, when }) =>
    lacksOf(
      m,
      thing,
      'tight',
      (v) => {
        const c = decode(v);
        return size(c) - c.out < Math.max(1, count ?? 1);
      },
      'mounted',
      when,
    ),
  'some out': (m, { thing, count, when }) =>
    lacksOf(m, thing, 'tight', (v) => decode(v).out < Math.max(1, count ?? 1), 'off', when),
  'none out': (m, { thing, when }) => lacksOf(m, thing, 'tight', (v) => decode(v).out > 0, 'in', when),
  // A clamp is slipped on before the hose it closes; it holds nothing until it is tightened.
  'held thing in': (m, { act, thing, when }) =>
    lacksBy(startsOnly(act) ? m.job.inverse(thing, 'held by') : holds(m, thing), (r) =>
      notIn(m, r.of, m.d.and(when, r.when)),
    ),
  'cover order': (m, { thing, when }) =>
    lacksBy(m.job.inverse(thing, 'behind'), (r) =>
      r.of.kind === 'part' || r.of.kind === 'connection' ? notIn(m, r.of, m.d.and(when, r.when)) : NO_LACKS,
    ),
  'nothing left behind it': (m, { thing, when }) =>
    lacksBy(m.job.inverse(thing, 'behind'), (r) =>
      r.of.kind === 'temporary'
        ? lacksOf(m, r.of, 'put', (v) => v === 'placed', 'gone', m.d.and(when, r.when))
        : NO_LACKS,
    ),
  // A bearing that the same line names goes in with its hub.
  'members in': (m, { act, thing, when }) =>
    lacksBy(m.job.inverse(thing, 'in'), (r) =>
      r.of.kind === 'part' && !hasClause(r.of, 'held by') && !isObject(act, r.of)
        ? notIn(m, r.of, m.d.and(when, r.when))
        : NO_LACKS,
    ),
  'joint wet': (m, { thing, when }) => {
    const sealant = sealantOf(m.job, thing);
    if (!sealant) return NO_LACKS;
    const dry = lacksOf(m, thing, 'joint', (v) => v === 'old', 'wet', when);
    const limit = minutesOf(sealant, 'fit within');
    if (dry.length > 0 || limit === undefined) return dry;
    return m.clocks
      .over(`wet ${thing.id}`, limit, when)
      .map((c) => ({ thing: sealant, want: 'within time', when: c.when, maker: c.by }));
  },
  posture: (m, { act, thing, when }) => {
    const at = act.statement?.clauses ?? [];
    const ride = hasClause(thing, 'at ride height') || at.some((c) => c.word === 'at ride height');
    const ground = hasClause(thing, 'on ground') || at.some((c) => c.word === 'on ground');
    if (!ride && !ground) return NO_LACKS;
    const up = lacksOf(
      m,
      vehicleOf(m),
      'posture',
      (v) => v !== 'ground',
      ride ? 'ride height' : 'back on ground',
      when,
    );
    if (!ride) return up;
    const loaded = m.where(suspensionOf(m), 'suspension', (v) => v !== 'free');
    return up.map((l) => ({ ...l, when: m.d.minus(l.when, loaded) })).filter((l) => l.when !== NEVER);
  },
  'torque clock': (m, { thing, when }) =>
    lacksBy(holds(m, thing), (r) => curing(m, r.of, 'torque after', when)),
  // A torque that is nothing but an angle is a finding about its figures; here an angle stage is asked for its stage before.
  'snug first': (m, { act, thing, when }) => {
    const stage = stageOf(act);
    if (stage < 2) return NO_LACKS;
    const byAngle = torqueLines(thing).some(
      (t) => t.spec?.stages[stage - 1]?.measure.measure?.unit.kind === 'angle',
    );
    return byAngle
      ? lacksOf(
          m,
          thing,
          'tight',
          (v) => decode(v).snug + decode(v).torqued < size(decode(v)),
          'stage',
          when,
          `${stage - 1}`,
        )
      : NO_LACKS;
  },
  'earlier stages': (m, { act, thing, when }) => {
    const stage = stageOf(act);
    return stage > 1
      ? lacksOf(
          m,
          thing,
          'tight',
          (v) => decode(v).stage < stage - 1 && decode(v).torqued < size(decode(v)),
          'stage',
          when,
          `${stage - 1}`,
        )
      : NO_LACKS;
  },
  'has torque': () => NO_LACKS,
  'hand tight': () => NO_LACKS,
  'not spent': (m, { thing, when }) =>
    hasClause(thing, 'renew') ? lacksOf(m, thing, 'spent', (v) => v === 'yes', 'unspent', when) : NO_LACKS,
  away: (m, { thing, when }) => lacksOf(m, thing, 'put', (v) => v === 'placed', 'gone', when),
  placed: (m, { thing, when }) => lacksOf(m, thing, 'put', (v) => v === 'away', 'placed', when),
  connected: (m, { thing, when }) => lacksOf(m, thing, 'link', (v) => v !== 'connected', 'mounted', when),
  disconnected: (m, { thing, when }) =>
    lacksOf(m, thing, 'link', (v) => v !== 'disconnected', 'disconnected', when),
  'not connected': (m, { thing, when }) =>
    lacksOf(m, thing, 'link', (v) => v === 'connected', 'disconnected', when),
  capped: (m, { thing, when }) => lacksOf(m, thing, 'link', (v) => v !== 'capped', 'capped', when),
  // A lamp is plugged in while it is still in the hand, and goes on in the next line.
  'parts joined in': (m, { act, thing, when }) => [
    ...m.job
      .relations(thing, 'on')
      .flatMap((r) =>
        notIn(
          m,
          r.target,
          m.d.minus(m.d.and(when, r.when), nextMakes(m, act, r.target, 'fitted', when)),
        ).filter((l) => !hungOnly(m, l)),
      ),
    ...m.job.inverse(thing, 'held by').flatMap((r) => notIn(m, r.of, m.d.and(when, r.when))),
  ],
  'drain open': (m, { thing, when }) =>
    m.job.relations(thing, 'drain at').flatMap((r) => {
      // A tap or a plug that is loose runs already.
      if (r.target.kind === 'fastener')
        return lacksOf(m, r.target, 'tight', (v) => !fastenerSlack(v), 'off', m.d.and(when, r.when));
      if (r.target.kind !== 'part') return notOff(m, r, when);
      const still = m.d.minus(
        when,
        m.where(r.target, 'place', (v) => v !== 'in'),
      );
      return m.job
        .relations(r.target, 'held by')
        .filter((h) => h.target.kind === 'fastener')
        .flatMap((h) =>
          lacksOf(m, h.target, 'tight', (v) => !fastenerSlack(v), 'slack', m.d.and(still, h.when)),
        );
    }),
  'fill open': (m, { act, thing, when }) =>
    (act.statement?.verb.on.fluid?.makes.includes('levelled')
      ? readAt(m, thing)
      : filledAt(m, act, thing)
    ).flatMap((r) => notOff(m, r, when)),
  closed: (m, { thing, when }) => closers(m, thing).flatMap((t) => notClosed(m, t, when)),
  'fill clock': (m, { thing, when }) => closers(m, thing).flatMap((t) => curing(m, t, 'fill after', when)),
  'holds fluid': (m, { thing, when }) =>
    (thing.kind === 'circuit' ? m.job.relations(thing, 'uses').map((r) => r.target) : [thing]).flatMap(
      (fluid) => lacksOf(m, fluid, 'level', (v) => v === 'drained' || v === 'low', 'fluid', when),
    ),
  // The fluid is not asked for here: a circuit is evacuated empty.
  'circuit closed': (m, { thing, when }) =>
    m.job
      .inverse(thing, 'in')
      .filter((r) => r.of.kind === 'connection')
      .flatMap((r) => notClosed(m, r.of, m.d.and(when, r.when))),
  settled: (m, { thing, when }) => {
    const minutes = minutesOf(thing, 'settle');
    if (minutes === undefined) return [];
    return m.clocks
      .short(`settle ${thing.id}`, minutes, when)
      .map((c) => ({ thing, want: 'settled', when: c.when, maker: c.by, value: `${minutes - c.minutes}` }));
  },
  'faces clean': (m, { act, thing, when }) =>
    joinsAt(m.job, act.statement, thing)
      .flatMap((part) => facesOf(m.job, part))
      .flatMap((face) => lacksOf(m, face, 'clean', (v) => v !== 'clean', 'clean', when)),
  'not chocked': (m, { thing, when }) => lacksOf(m, thing, 'chock', (v) => v === 'yes', 'unchocked', when),
  chocked: (m, { thing, when }) => lacksOf(m, thing, 'chock', (v) => v === 'no', 'chocked', when),
  tagged: (m, { thing, when }) => lacksOf(m, thing, 'tag', (v) => v === 'no', 'tagged', when),
  tied: (m, { thing, when }) => lacksOf(m, thing, 'tie', (v) => v === 'no', 'tied', when),
  'on ground': posture(['raised', 'supported'], 'back on ground'),
  raised: posture(['ground', 'supported'], 'up'),
  up: posture(['ground'], 'up'),
  'wheels on': (m, { when }) => wholeLacks(m, when, 'wheels'),
  'suspension free': (m, { when }) =>
    lacksOf(m, suspensionOf(m), 'suspension', (v) => v === 'jacked', 'suspension free', when),
  'suspension loaded': (m, { when }) =>
    lacksOf(m, suspensionOf(m), 'suspension', (v) => v !== 'jacked', 'suspension loaded', when),
  whole: (m, { when }) => wholeLacks(m, when, 'road'),
  'closed to run': (m, { when }) => wholeLacks(m, when, 'engine'),
  unchocked: (m, { when }) =>
    [...m.cells()]
      .filter(([i]) => i.aspect === 'chock')
      .flatMap(([i]) => lacksOf(m, i.thing, 'chock', (v) => v === 'yes', 'unchocked', when)),
  'nothing placed': (m, { when }) =>
    [...m.cells()]
      .filter(([i]) => i.aspect === 'put')
      .flatMap(([i]) => lacksOf(m, i.thing, 'put', (v) => v === 'placed', 'gone', when)),
  'run clock': (m, { when }) =>
    [...m.cells()]
      .filter(([i]) => i.aspect === 'joint')
      .flatMap(([i]) => curing(m, i.thing, 'run after', when)),
  'out to renew': (m, { thing, when }) => {
    if (thing.kind === 'fluid') return lacksOf(m, thing, 'level', (v) => v === 'full', 'drained', when);
    if (thing.kind === 'fastener')
      return lacksOf(m, thing, 'tight', (v) => decode(v).out < size(decode(v)), 'off', when);
    if (thing.kind === 'connection')
      return lacksOf(m, thing, 'link', (v) => v === 'connected', 'disconnected', when);
    if (!hasClause(thing, 'held by')) return [];
    // What rides in a part on the bench can be changed there.
    const onBench = m.job
      .relations(thing, 'in')
      .filter((r) => r.target.kind === 'part')
      .reduce(
        (c, r) =>
          m.d.or(
            c,
            m.d.and(
              r.when,
              m.where(r.target, 'place', (v) => v === 'out'),
            ),
          ),
        NEVER,
      );
    return lacksOf(m, thing, 'place', (v) => v === 'in', 'off', m.d.minus(when, onBench));
  },
  'value declared': () => [],
};

/** The stage that the line names, 0 when it names none. */
function stageOf(act: Act): number {
  const stage = Number(act.statement?.clause('stage')?.raw?.text);
  return Number.isInteger(stage) && stage > 0 ? stage : 0;
}

/** Where a level is read: at its mark, a plug that must be out for it or a place; else at the filler. */
function readAt(m: Machine, fluid: Thing): readonly Opening[] {
  const marks = m.job.relations(fluid, 'until level at');
  return marks.length > 0 ? marks : m.job.relations(fluid, 'fill at');
}

/** What is open while fluid goes in: its filler, and the plug that the line fills up to. */
function filledAt(m: Machine, act: Act, fluid: Thing): readonly Opening[] {
  const marks = (act.statement?.named('until level at') ?? []).flatMap(({ thing }): Opening[] =>
    thing ? [{ target: thing, count: undefined, value: undefined, when: m.job.universe.domain }] : [],
  );
  const fillers = m.job.relations(fluid, 'fill at');
  return [...fillers, ...marks.filter((mark) => fillers.every((r) => r.target !== mark.target))];
}

type Opening = Parameters<typeof notOff>[1];

/** Where the next statement that runs hangs the part, or fits it. */
function nextMakes(m: Machine, act: Act, part: Thing, make: 'hung' | 'fitted', when: Condition): Condition {
  let left = when;
  let made: Condition = NEVER;
  for (const next of act.following) {
    const here = m.d.and(left, m.job.where(next.guard));
    if (next.verb.on.part?.makes.includes(make) && next.objects.some((o) => o.thing === part))
      made = m.d.or(made, here);
    left = m.d.minus(left, here);
  }
  return made;
}

/** Whether the act only puts fasteners in by hand. */
function startsOnly(act: Act): boolean {
  return act.statement?.verb.on.fastener?.makes.includes('started') ?? false;
}

/** A hung part is at hand on its line: what is on it may be joined. */
function hungOnly(m: Machine, lack: Lack): boolean {
  return (
    lack.thing.kind === 'part' &&
    m.d.implies(
      lack.when,
      m.where(lack.thing, 'place', (v) => v === 'hung'),
    )
  );
}

/** What must be shut before a fluid goes in: drain point, parts that close it, connections of its circuits. */
function closers(m: Machine, fluid: Thing): Thing[] {
  const circuits = m.job.inverse(fluid, 'uses').map((r) => r.of);
  const found = [
    ...m.job.relations(fluid, 'drain at').map((r) => r.target),
    ...m.job.inverse(fluid, 'closes').map((r) => r.of),
    ...circuits.flatMap((c) =>
      m.job
        .inverse(c, 'in')
        .filter((r) => r.of.kind === 'connection')
        .map((r) => r.of),
    ),
  ];
  return [...new Set(found)];
}

/** Where a made joint has not cured as long as its sealant asks. */
function curing(m: Machine, part: Thing, clause: string, when: Condition): readonly Lack[] {
  const sealant = sealantOf(m.job, part);
  const minutes = sealant ? minutesOf(sealant, clause) : undefined;
  if (!sealant || minutes === undefined) return NO_LACKS;
  return m.clocks.short(`made ${part.id}`, minutes, when).map((c) => ({
    thing: sealant,
    want: 'cured',
    when: c.when,
    maker: c.by,
    value: `${minutes - c.minutes}`,
  }));
}
