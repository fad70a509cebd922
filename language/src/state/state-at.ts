// The vehicle at a line: what is off, hung, loose, drained, raised, placed, changed or owed just before the work of
// the line. The run keeps every change with the act that made it; replaying them up to the line gives the answer.
import { hoursOf, minutesOf } from '../names/figures.js';
import { clausesOf, hasClause, type Thing } from '../names/model.js';
import { ALWAYS, type Condition, NEVER } from '../variants/diagrams.js';
import type { Universe } from '../variants/universe.js';
import type { Act } from './act.js';
import { type Aspect, initialValue } from './aspects.js';
import { decode, size } from './counts.js';
import { type ClockWord, detailText, type StateDetail } from './detail-words.js';
import { CAME_IN, type Choice } from './guarded.js';
import { sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import { minutesWaited } from './make-rules.js';
import type { StateRun } from './run.js';

export type StateGroup =
  | 'off'
  | 'hung'
  | 'loose'
  | 'untorqued'
  | 'disconnected'
  | 'capped'
  | 'drained'
  | 'unbled'
  | 'raised'
  | 'placed'
  | 'changed'
  | 'disturbed'
  | 'owed'
  | 'clock';

/** Groups from the gravest for who takes over, with their headings. */
export const STATE_GROUPS: Readonly<Record<StateGroup, string>> = {
  raised: 'Vehicle up',
  off: 'Off the vehicle',
  hung: 'Hung',
  disconnected: 'Disconnected',
  capped: 'Capped',
  loose: 'Loose',
  untorqued: 'To torque',
  drained: 'Drained or low',
  unbled: 'To bleed',
  clock: 'Sealant at work',
  placed: 'Placed for the job',
  changed: 'Not as it came in',
  disturbed: 'To adjust',
  owed: 'Owed before hand-back',
};

/** One thing that is not as it came in. */
export interface StateFact {
  readonly group: StateGroup;
  readonly thing: Thing;
  /** How much or what: `4 of 5`, `neutral`, `on stands`; in words by `detailText`. */
  readonly said: StateDetail;
  /** The same in English. Empty when the group says all. */
  readonly detail: string;
  /** The act that made it so, undefined when it came in so. */
  readonly act: Act | undefined;
  readonly when: Condition;
  /** The combinations in words; absent when it holds on all that are asked about. */
  readonly variants?: string;
}

/** Which combinations are asked about: a value for some axes (`side left`, `axle heavy`). */
export type Chosen = Readonly<Record<string, string>>;

/**
 * What is not as it came in just before the line that starts at `offset` of the run's own file; at the end of the
 * text, how it is handed back. Performed lines count where their `perform` stands.
 */
export function stateAt(run: StateRun, offset: number, chosen: Chosen = {}): StateFact[] {
  const index = lastActBefore(run, offset);
  const then = run.machine.asAfter(index);
  const within = then.d.and(chosenCondition(then.job.universe, chosen), reachedAt(run, index, offset));
  const facts: StateFact[] = [];
  for (const [{ thing, aspect }, guarded] of then.cells()) {
    const first = initialValue(then.job, thing, aspect, pinnedOf(run.machine, thing))[0]?.value;
    for (const choice of guarded) {
      // A joint that is made anew is not as it came in: its sealant cures.
      const isAnew = aspect === 'joint' && choice.by !== CAME_IN;
      if (choice.value === first && aspect !== 'spent' && !isAnew) continue;
      const when = then.d.and(choice.when, then.d.and(within, then.job.exists(thing)));
      if (when === NEVER) continue;
      const told = isAnew ? tellJoint(then, thing, choice, when) : tell(thing, aspect, String(choice.value));
      if (!told) continue;
      const variants = then.d.implies(within, when) ? undefined : then.job.universe.words(when);
      facts.push({
        group: told.group,
        said: told.said,
        detail: detailText(told.said, 'en'),
        thing,
        when,
        act: choice.by === CAME_IN ? undefined : then.acts[choice.by],
        ...(variants === undefined ? {} : { variants }),
      });
    }
  }
  const order = Object.keys(STATE_GROUPS);
  return facts.sort(
    (a, b) => order.indexOf(a.group) - order.indexOf(b.group) || (a.act?.index ?? -1) - (b.act?.index ?? -1),
  );
}

/** The last act that ran before the text offset: -1 when none did. */
export function lastActBefore(run: StateRun, offset: number): number {
  const { acts, job } = run.machine;
  for (let i = acts.length - 1; i >= 0; i--) {
    const act = acts[i];
    if (!act) continue;
    const line = act.through ?? act.line;
    if ((act.through || act.file === job.file.path) && line.start < offset) return i;
  }
  return -1;
}

/** Combinations with the chosen values; axes and values that are not known are passed over. */
export function chosenCondition(universe: Universe, chosen: Chosen): Condition {
  let result: Condition = universe.domain;
  for (const [name, value] of Object.entries(chosen)) {
    const axis = universe.axis(name);
    const i = axis?.values.findIndex((v) => v === value || covers(v, value)) ?? -1;
    if (axis && i >= 0) result = universe.diagrams.and(result, universe.diagrams.where(axis.variable, [i]));
  }
  return result === NEVER ? universe.domain : result;
}

/** `2018 to 2020` covers the year 2019. */
function covers(band: string, value: string): boolean {
  const [from, to] = band.split(' to ').map(Number);
  const year = Number(value);
  return Number.isInteger(year) && from !== undefined && to !== undefined && year >= from && year <= to;
}

/** Inside a block that only some combinations reach, the others are not asked about. */
function reachedAt(run: StateRun, index: number, offset: number): Condition {
  const next = run.machine.acts[index + 1];
  const line = next ? (next.through ?? next.line) : undefined;
  if (!next || !line || line.code.start > offset || line.code.end < offset) return ALWAYS;
  return next.when === NEVER ? ALWAYS : next.when;
}

interface Told {
  readonly group: StateGroup;
  readonly said: StateDetail;
}

const NOTHING: StateDetail = { what: 'nothing' };
const BEFORE_FIT: readonly ClockWord[] = ['fit within'];
const AFTER_FIT: readonly ClockWord[] = ['torque after', 'fill after', 'run after'];

function pinnedOf(m: Machine, thing: Thing): ReadonlyMap<string, string> {
  return thing.kind === 'condition' ? new Map([[thing.name, m.rest(thing)]]) : new Map();
}

function tell(thing: Thing, aspect: Aspect, value: string): Told | undefined {
  switch (aspect) {
    case 'place':
      return { group: value === 'hung' ? 'hung' : 'off', said: NOTHING };
    case 'tight':
      return tellFastener(thing, value);
    case 'link':
      return { group: value === 'capped' ? 'capped' : 'disconnected', said: NOTHING };
    case 'level':
      return value === 'unchecked'
        ? { group: 'owed', said: { what: 'level unchecked' } }
        : { group: 'drained', said: { what: 'word', word: value } };
    case 'air':
      return { group: 'unbled', said: NOTHING };
    case 'setting':
      return { group: 'disturbed', said: NOTHING };
    case 'value':
    case 'position':
      return { group: 'changed', said: { what: 'word', word: value } };
    case 'put':
    case 'chock':
      return { group: 'placed', said: { what: aspect === 'chock' ? 'chocked' : 'nothing' } };
    case 'tag':
    case 'tie':
      return value === 'yes'
        ? { group: 'placed', said: { what: aspect === 'tag' ? 'tagged' : 'tied' } }
        : undefined;
    case 'posture':
      return { group: 'raised', said: { what: value === 'supported' ? 'on stands' : 'lifted' } };
    case 'suspension':
      return value === 'jacked' ? { group: 'raised', said: { what: 'suspension jacked' } } : undefined;
    case 'spent':
      return value === 'yes' ? { group: 'owed', said: { what: 'spent' } } : undefined;
    case 'joint':
    case 'clean':
    case 'fresh':
      return undefined;
  }
}

function tellFastener(thing: Thing, word: string): Told | undefined {
  const c = decode(word);
  const all = size(c);
  const some = (count: number): StateDetail =>
    count === all ? { what: 'all', all } : { what: 'some', count, all };
  if (c.out > 0) return { group: 'off', said: some(c.out) };
  if (c.loose > 0) return { group: 'loose', said: some(c.loose) };
  if (c.torqued === all || hasClause(thing, 'no torque')) return undefined;
  const said: StateDetail =
    c.stage > 0 ? { what: 'stage', stage: c.stage } : { what: c.snug > 0 ? 'snug' : 'by hand' };
  return { group: 'untorqued', said };
}

/** A joint that is open, wet, or made; a made one keeps in view what of its times has not been waited for yet. */
function tellJoint(m: Machine, part: Thing, { value, by }: Choice, when: Condition): Told | undefined {
  const sealant = sealantOf(m.job, part);
  if (!sealant) return undefined;
  if (value === 'old') return { group: 'owed', said: { what: 'fresh', name: sealant.name } };
  const text = m.job.imports.model(sealant.file)?.tree.text ?? '';
  const waited = m.acts
    .slice(by + 1)
    .reduce((sum, act) => sum + (m.d.implies(when, act.when) ? minutesWaited(act) : 0), 0);
  const clocks = (value === 'wet' ? BEFORE_FIT : AFTER_FIT).flatMap((word) => {
    if (value === 'made' && waited >= (minutesOf(sealant, word) ?? 0)) return [];
    const spec = clausesOf(sealant, word)[0]?.clause.spec;
    const hours = hoursOf(spec?.stages[0]?.measure);
    const time = spec && `${text.slice(spec.start, spec.end)}${hours === undefined ? '' : ` (${hours})`}`;
    return time === undefined ? [] : [{ word, time }];
  });
  return clocks.length > 0 ? { group: 'clock', said: { what: 'clocks', clocks } } : undefined;
}
