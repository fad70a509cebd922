// How each make of the vocabulary changes the state.
import { isFormless, minutes, minutesOf, stageCount } from '../names/figures.js';
import { allThings } from '../names/job.js';
import { clausesOf, hasClause, type Thing } from '../names/model.js';
import type { Condition } from '../variants/diagrams.js';
import type { Make } from '../vocabulary/needs.js';
import type { Act } from './act.js';
import {
  decode,
  wordClipped,
  wordLoosened,
  wordReseated,
  wordSnugged,
  wordStaged,
  wordStarted,
  wordTakenOut,
  wordTorqued,
} from './counts.js';
import { facesOf, joinsAt, sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import type { Asked } from './need-rules.js';

type MakeRule = (m: Machine, asked: Asked) => void;

const change =
  (aspect: Parameters<Machine['change']>[1], to: string): MakeRule =>
  (m, { act, thing, when }) =>
    m.change(thing, aspect, when, () => to, act.index);

/** Loosening or taking out a torqued single-use fastener spends it. */
function spend(m: Machine, thing: Thing, when: Condition, by: number): void {
  if (!hasClause(thing, 'renew')) return;
  const torquedWhere = m.d.minus(
    m.d.and(
      when,
      m.where(thing, 'tight', (v) => decode(String(v)).torqued > 0),
    ),
    m.muted(thing),
  );
  m.change(thing, 'spent', torquedWhere, () => 'yes', by);
}

/** What moves or comes off upsets the settings that name it. */
function upset(m: Machine, { act, thing, when }: Asked): void {
  for (const r of m.job.inverse(thing, 'disturbed by'))
    m.change(r.of, 'setting', m.d.and(when, r.when), () => 'disturbed', act.index);
}

/** Fluids that opening this lets out: they are low unless they were drained before. */
function lose(m: Machine, { act, thing, when }: Asked): void {
  const fluids = [
    ...m.job.inverse(thing, 'drain at').map((r) => r.of),
    ...m.job.relations(thing, 'closes').map((r) => r.target),
  ];
  for (const fluid of fluids) m.change(fluid, 'level', when, (v) => (v === 'drained' ? v : 'low'), act.index);
}

/** An open fuel line runs empty, the tank does not: it is primed and bled, and nothing is filled or checked. */
function isFuelLine(thing: Thing): boolean {
  return clausesOf(thing, 'marked').some(({ clause }) =>
    clause.words.some(({ text }) => FUEL_MARKS.has(text)),
  );
}
const FUEL_MARKS = new Set(['fuel', 'fuel-line', 'fuel-system']);

function fillTo(m: Machine, { act, thing, when }: Asked): void {
  const settles = minutesOf(thing, 'settle');
  m.put(thing, 'level', when, settles === undefined ? 'full' : 'unchecked', act.index);
  if (settles !== undefined) m.clocks.start(`settle ${thing.id}`, 'least', settles, when, act.index);
}

export const MAKE_RULES: Readonly<Record<Make, MakeRule>> = {
  loose(m, asked) {
    const { act, thing, count, when } = asked;
    spend(m, thing, when, act.index);
    m.change(thing, 'tight', when, (v) => wordLoosened(String(v), count), act.index);
    upset(m, asked);
  },
  out(m, asked) {
    const { act, thing, count, when } = asked;
    spend(m, thing, when, act.index);
    m.change(thing, 'tight', when, (v) => wordTakenOut(String(v), count), act.index);
    upset(m, asked);
    lose(m, asked);
  },
  started(m, { act, thing, count, when }) {
    const putIn = isFormless(thing) ? wordClipped : wordStarted;
    m.change(thing, 'tight', when, (v) => putIn(String(v), count), act.index);
    if (hasClause(thing, 'renew')) {
      m.change(thing, 'spent', when, () => 'no', act.index);
      m.change(thing, 'fresh', when, () => 'new', act.index);
    }
  },
  snug: (m, { act, thing, when }) => m.change(thing, 'tight', when, (v) => wordSnugged(String(v)), act.index),
  torqued(m, { act, thing, when }) {
    const stage = stageOf(act.statement?.clause('stage')?.raw?.text);
    const last = stageCount(thing);
    if (stage !== undefined && stage < last)
      m.change(thing, 'tight', when, (v) => wordStaged(String(v), stage), act.index);
    else m.change(thing, 'tight', when, (v) => wordTorqued(String(v)), act.index);
  },
  tight: (m, { act, thing, when }) =>
    m.change(thing, 'tight', when, (v) => wordTorqued(String(v)), act.index),
  renewed(m, { act, thing, when }) {
    m.change(thing, 'fresh', when, () => 'new', act.index);
    if (thing.kind === 'fastener') m.change(thing, 'spent', when, () => 'no', act.index);
  },
  'taken off'(m, asked) {
    const { act, thing, when } = asked;
    m.change(thing, 'place', when, () => 'out', act.index);
    if (thing.values.length > 0)
      m.change(thing, 'position', when, () => thing.values[0]?.text ?? '', act.index);
    if (sealantOf(m.job, thing)) {
      m.change(thing, 'joint', when, () => 'old', act.index);
      for (const face of facesOf(m.job, thing)) m.change(face, 'clean', when, () => 'dirty', act.index);
      m.clocks.stop(`made ${thing.id}`, when, act.index);
    }
    upset(m, asked);
    lose(m, asked);
  },
  hung(m, asked) {
    const { act, thing, when } = asked;
    m.change(thing, 'place', when, () => 'hung', act.index);
    upset(m, asked);
  },
  fitted(m, { act, thing, when }) {
    m.change(thing, 'place', when, () => 'in', act.index);
    if (hasClause(thing, 'renew')) m.change(thing, 'fresh', when, () => 'new', act.index);
    const sealant = sealantOf(m.job, thing);
    if (!sealant) return;
    const closing = m.d.and(
      when,
      m.where(thing, 'joint', (v) => v === 'wet'),
    );
    m.change(thing, 'joint', closing, () => 'made', act.index);
    const limits = ['torque after', 'fill after', 'run after'].map((w) => minutesOf(sealant, w) ?? 0);
    m.clocks.start(`made ${thing.id}`, 'least', Math.max(...limits), closing, act.index);
    m.clocks.stop(`wet ${thing.id}`, closing, act.index);
  },
  moved(m, asked) {
    const to = asked.act.statement?.named('to')[0]?.item.name.text ?? asked.value;
    if (to !== undefined) m.put(asked.thing, 'position', asked.when, to, asked.act.index);
    upset(m, asked);
  },
  placed: change('put', 'placed'),
  removed: change('put', 'away'),
  connected(m, { act, thing, when }) {
    m.change(thing, 'link', when, () => 'connected', act.index);
    if (hasClause(thing, 'renew')) m.change(thing, 'fresh', when, () => 'new', act.index);
  },
  disconnected(m, asked) {
    const { act, thing, when } = asked;
    m.change(thing, 'link', when, () => 'disconnected', act.index);
    for (const r of m.job.relations(thing, 'in')) {
      if (r.target.kind !== 'circuit') continue;
      const at = m.d.and(when, r.when);
      // A circuit without fluid and without a bleed screw holds compressed air or gas: nothing is to be bled.
      if (hasClause(r.target, 'uses') || hasClause(r.target, 'bleed at'))
        m.change(r.target, 'air', at, () => 'air', act.index);
      if (isFuelLine(thing)) continue;
      for (const f of m.job.relations(r.target, 'uses'))
        m.change(f.target, 'level', m.d.and(at, f.when), (v) => (v === 'drained' ? v : 'low'), act.index);
    }
    upset(m, asked);
    lose(m, asked);
  },
  capped: change('link', 'capped'),
  uncapped: change('link', 'disconnected'),
  drained: (m, { act, thing, when }) => m.put(thing, 'level', when, 'drained', act.index),
  filled: fillTo,
  topped: fillTo,
  levelled: change('level', 'full'),
  bled(m, { act, thing, when }) {
    m.change(thing, 'air', when, () => 'bled', act.index);
    for (const r of m.job.relations(thing, 'bleed at')) {
      if (r.target.kind === 'fastener')
        m.change(r.target, 'tight', m.d.and(when, r.when), (v) => wordReseated(String(v)), act.index);
    }
    if (m.job.inverse(thing, 'in').some((r) => isFuelLine(r.of))) return;
    for (const r of m.job.relations(thing, 'uses'))
      m.change(r.target, 'level', m.d.and(when, r.when), (v) => (v === 'full' ? 'unchecked' : v), act.index);
  },
  cleaned: change('clean', 'clean'),
  coated(m, { act, thing, when }) {
    for (const part of joinsAt(m.job, act.statement, thing)) {
      const off = m.d.and(
        when,
        m.where(part, 'place', (v) => v !== 'in'),
      );
      m.change(part, 'joint', off, () => 'wet', act.index);
      const limit = minutesOf(thing, 'fit within');
      if (limit !== undefined) m.clocks.start(`wet ${part.id}`, 'most', limit + 1, off, act.index);
    }
  },
  set(m, { act, thing, value, when }) {
    if (value !== undefined) m.put(thing, 'value', when, value, act.index);
  },
  // A nut without a torque that the setting hangs on is left where the setting is right.
  adjusted(m, { act, thing, when }) {
    m.change(thing, 'setting', when, () => 'set', act.index);
    for (const r of m.job.relations(thing, 'disturbed by')) {
      if (r.target.kind === 'fastener' && hasClause(r.target, 'no torque'))
        m.change(r.target, 'tight', m.d.and(when, r.when), (v) => wordReseated(String(v)), act.index);
    }
  },
  disturbed: change('setting', 'disturbed'),
  chocked: change('chock', 'yes'),
  unchocked: change('chock', 'no'),
  // A tag on the vehicle forbids something until it comes off; one on a hose tells it from its neighbour and may stay.
  tagged: (m, { act, thing, when }) =>
    m.change(thing, 'tag', when, () => (thing.kind === 'machine' ? 'yes' : 'kept'), act.index),
  untagged: change('tag', 'no'),
  // A strap that is a tool goes back to its drawer; a cable tie stays.
  tied(m, { act, thing, when }) {
    const isLent = act.statement?.named('with').some((item) => item.thing?.kind === 'tool') ?? false;
    m.change(thing, 'tie', when, () => (isLent ? 'yes' : 'kept'), act.index);
  },
  untied: change('tie', 'no'),
  raised(m, { act, thing, when }) {
    const holds = act.statement?.named('with').some((o) => o.thing?.marks.includes('holds-load')) ?? false;
    m.change(thing, 'posture', when, () => (holds ? 'supported' : 'raised'), act.index);
    const suspension = m.job.scope.resolve('suspension');
    if (suspension) m.change(suspension, 'suspension', when, () => 'free', act.index);
  },
  supported: change('posture', 'supported'),
  lowered(m, { act, thing, when }) {
    m.change(thing, 'posture', when, () => 'ground', act.index);
    const suspension = m.job.scope.resolve('suspension');
    if (suspension) m.change(suspension, 'suspension', when, () => 'loaded', act.index);
  },
  loaded: change('suspension', 'jacked'),
  unloaded: change('suspension', 'free'),
  'fluids moved'(m, { act, when }) {
    for (const fluid of allThings(m.job.scopes)) {
      const settles = fluid.kind === 'fluid' ? minutesOf(fluid, 'settle') : undefined;
      if (settles !== undefined) m.clocks.start(`settle ${fluid.id}`, 'least', settles, when, act.index);
    }
  },
  waited: (m, { act, when }) => m.clocks.advance(minutesWaited(act), 0, when),
  outcome: () => {},
};

/** The minutes that a line waits, by its own figure: the time that work takes cures nothing. */
export function minutesWaited({ statement }: Act): number {
  if (!statement?.verb.alone?.makes.includes('waited')) return 0;
  return minutes(statement.clause('bare')?.spec?.stages[0]?.measure) ?? 0;
}

function stageOf(text: string | undefined): number | undefined {
  const n = text === undefined ? Number.NaN : Number(text);
  return Number.isInteger(n) && n > 0 ? n : undefined;
}
