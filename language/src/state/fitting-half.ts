// Writes the fitting half of a job from its taking-off half. It does not reverse the text: it asks, of the vehicle as
// the work written so far leaves it, what can be done next towards bringing it back together, takes the thing that came
// off last first, and goes on until nothing is left. So the lines proposed satisfy every relation by construction.
import { hasClause, type Thing } from '../names/model.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { VerbDef } from '../vocabulary/verb.js';
import { lacksFor, supposedAct } from './can-do.js';
import { decode, size } from './counts.js';
import type { Lack } from './deficit.js';
import { inFittingOrder, inTurn, isTightening, nextInReverse } from './fitting-order.js';
import { pairOf, runPair } from './fitting-pair.js';
import { type FittingStep, FittingSteps } from './fitting-steps.js';
import { facesOf, sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import { MAKE_RULES } from './make-rules.js';
import type { StateRun } from './run.js';
import { lastActBefore, type StateFact, stateAt } from './state-at.js';

export interface FittingHalf {
  readonly installation: readonly FittingStep[];
  readonly completion: readonly FittingStep[];
  /** What could not be brought back by any line, for a person to settle. */
  readonly left: readonly Thing[];
}

/** Proposes the lines that put back together what the work before `offset` took apart. Pure; writes nothing. */
export function fittingHalf(run: StateRun, offset = Number.MAX_SAFE_INTEGER): FittingHalf {
  const m = run.machine.asAfter(lastActBefore(run, offset));
  const writer = new Writer(m);
  const open = (): StateFact[] =>
    inFittingOrder(
      m,
      stateAt({ ...run, machine: m }, Number.MAX_SAFE_INTEGER).filter((fact) => !writer.gaveUp(fact)),
    );
  for (let facts = open(); facts.length > 0; facts = open()) {
    if (facts.some((fact) => isTightening(fact) && writer.settle(fact)) || writer.perform(facts)) continue;
    const isFree = inTurn(m, facts);
    // What had better wait is done only when nothing else can be.
    if (facts.some((fact, i) => isFree(fact, i) && writer.settle(fact))) continue;
    if (!facts.some((fact) => writer.settle(fact))) return writer.result(facts.map((f) => f.thing));
  }
  return writer.result([]);
}

class Writer {
  readonly #m: Machine;
  readonly #steps = new FittingSteps();
  readonly #given = new Set<string>();
  readonly #settled = new Map<string, number>();

  constructor(m: Machine) {
    this.#m = m;
  }

  gaveUp(fact: StateFact): boolean {
    return this.#given.has(`${fact.group} ${fact.thing.id}`);
  }

  /** Where what came off by an operation is next, and another of its procedure puts it back: performs that. */
  perform(facts: readonly StateFact[]): boolean {
    const next = nextInReverse(this.#m, facts);
    const pair = next && pairOf(this.#m, next, facts);
    if (!pair || !runPair(this.#m.asAfter(this.#m.acts.length - 1), pair)) return false;
    this.#steps.perform(pair.line);
    return runPair(this.#m, pair);
  }

  /** Writes the line that settles the fact, if it can be done now. Does first what is on the way there. */
  settle(fact: StateFact): boolean {
    const { group, thing } = fact;
    if (group === 'owed' && fact.said.what !== 'level unchecked') return this.#giveUp(fact);
    const verb = verbFor(fact);
    // What a line leaves as it was must not be tried for ever.
    if (!verb?.on[thing.kind] || this.#settledOften(fact)) return this.#giveUp(fact);
    if (group === 'off' || group === 'hung') this.#seal(thing);
    const isDone = this.#do(verb, fact) || this.#first(verb, fact);
    if (isDone) this.#settled.set(keyOf(fact), (this.#settled.get(keyOf(fact)) ?? 0) + 1);
    return isDone;
  }

  result(left: readonly Thing[]): FittingHalf {
    return {
      installation: this.#steps.written(false),
      completion: this.#steps.written(true),
      left: [...new Set(left)],
    };
  }

  #settledOften(fact: StateFact): boolean {
    return (this.#settled.get(keyOf(fact)) ?? 0) > MOST_TRIES;
  }

  #giveUp(fact: StateFact): boolean {
    this.#given.add(`${fact.group} ${fact.thing.id}`);
    return true;
  }

  #do(verb: VerbDef, fact: StateFact): boolean {
    const m = this.#m;
    const { thing, when } = fact;
    if (lacksFor(m, verb, thing, when).length > 0) return false;
    const uncap = fact.group === 'capped' ? VERB_BY_WORD.get('uncap') : undefined;
    if (uncap) this.#write(uncap, thing, fact);
    this.#make(verb, thing, when, verb.takesValue ? m.rest(thing) : undefined);
    this.#write(verb, thing, fact);
    return true;
  }

  #make(verb: VerbDef, thing: Thing, when: StateFact['when'], value: string | undefined): void {
    const act = supposedAct(this.#m, verb, when);
    this.#m.acts.push(act);
    for (const make of verb.on[thing.kind]?.makes ?? [])
      MAKE_RULES[make](this.#m, { act, thing, count: undefined, value, when });
  }

  /** Cleans the faces and lays the sealant of a part that is next to go on. */
  #seal(part: Thing): void {
    const m = this.#m;
    const sealant = sealantOf(m.job, part);
    const apply = VERB_BY_WORD.get('apply');
    const clean = VERB_BY_WORD.get('clean');
    const dry = m.where(part, 'joint', (v) => v === 'old');
    const install = VERB_BY_WORD.get('install');
    if (!sealant || !apply || !clean || !install || dry === NEVER) return;
    if (lacksFor(m, install, part, dry).some((l) => !SEALING.has(l.want))) return;
    for (const lack of lacksFor(m, install, part, dry)) this.#clear(lack);
    const faces = facesOf(m.job, part);
    for (const face of faces) {
      if (m.where(face, 'clean', (v) => v !== 'clean') === NEVER) continue;
      this.#make(clean, face, dry, undefined);
      this.#write(clean, face, undefined);
    }
    const act = supposedAct(m, apply, dry);
    m.acts.push(act);
    m.change(part, 'joint', dry, () => 'wet', act.index);
    const to = faces[0] ? ` to ${faces.map((f) => f.name).join(', ')}` : '';
    this.#steps.add({ verb: 'apply', text: `${sealant.name}${to}` });
  }

  /** Takes away what was placed where the part goes. */
  #clear({ want, thing, when }: Lack): void {
    const way = want === 'gone' ? wayBy('remove', thing, when) : undefined;
    if (!way || lacksFor(this.#m, way.verb, thing, when).length > 0) return;
    this.#make(way.verb, thing, when, undefined);
    this.#write(way.verb, thing, undefined);
  }

  /** Does what the verb still asks for, where all of that is work of its own: wheels snug, a filler open, a cure. */
  #first(verb: VerbDef, fact: StateFact): boolean {
    const lacks = lacksFor(this.#m, verb, fact.thing, fact.when);
    const ways = lacks.map((lack) => this.#wayTo(lack, verb, fact));
    if (lacks.length === 0 || ways.some((way) => way === undefined)) return false;
    const minutes = Math.max(0, ...ways.map((way) => (typeof way === 'number' ? way : 0)));
    const done = new Set<Thing>();
    for (const way of ways) {
      if (typeof way !== 'object' || done.has(way.thing)) continue;
      done.add(way.thing);
      if (lacksFor(this.#m, way.verb, way.thing, way.when).length > 0) return false;
      this.#make(way.verb, way.thing, way.when, undefined);
      this.#write(way.verb, way.thing, undefined);
    }
    if (minutes > 0) {
      this.#m.clocks.advance(minutes, 0, fact.when);
      this.#steps.add({ verb: 'wait', text: minutes % 60 === 0 ? `${minutes / 60} h` : `${minutes} min` });
    }
    return true;
  }

  /** The work that brings about what lacks, or the minutes to wait for it; undefined where neither would do. */
  #wayTo({ want, value, thing, when }: Lack, verb: VerbDef, fact: StateFact): Way | number | undefined {
    if (want === 'cured' || want === 'settled') return Number(value) || undefined;
    if (want === 'gone' && thing.kind === 'temporary') return wayBy('remove', thing, when);
    if (want === 'off' && verb.on.fluid?.needs.includes('fill open')) return wayBy('remove', thing, when);
    if (want === 'snug' && verb.on.machine?.needs.includes('wheels on')) return wayBy('snug', thing, when);
    if (!POSTURES.has(want) || !tightens(verb)) return undefined;
    // Until the vehicle stands on the ground, the fastener is drawn up by hand.
    const slack = this.#m.d.and(
      fact.when,
      this.#m.where(fact.thing, 'tight', (v) => !isSnug(v)),
    );
    return slack === NEVER ? undefined : wayBy('snug', fact.thing, slack);
  }

  #write(verb: VerbDef, thing: Thing, fact: StateFact | undefined): void {
    const value = verb.takesValue
      ? ` ${this.#m.rest(thing)}`
      : verb.on[thing.kind]?.makes.includes('moved')
        ? ` to ${thing.values[0]?.text ?? ''}`
        : '';
    this.#steps.add({
      verb: verb.word,
      thing,
      text: `${thing.name}${value}`,
      ...(fact?.variants === undefined ? {} : { only: `, when ${fact.variants}` }),
      goesOn: this.#m.job.inverse(thing, 'fill at').length > 0,
    });
  }
}

const keyOf = ({ group, thing, when }: StateFact): string => `${group} ${thing.id} ${when}`;

/** Seal, snug, wait, then the work itself: more than a handful of lines is never on the way to one thing. */
const MOST_TRIES = 8;

const tightens = ({ on }: VerbDef): boolean =>
  on.fastener?.makes.some((make) => make === 'torqued' || make === 'tight') ?? false;
/** What lacks of a joint that is about to be sealed. */
const SEALING: ReadonlySet<Lack['want']> = new Set<Lack['want']>(['wet', 'clean', 'gone']);
const POSTURES: ReadonlySet<Lack['want']> = new Set<Lack['want']>(['back on ground', 'ride height']);

/** Work of another verb that must be done first. */
interface Way {
  readonly verb: VerbDef;
  readonly thing: Thing;
  readonly when: Condition;
}

function wayBy(word: string, thing: Thing, when: Condition): Way | undefined {
  const verb = VERB_BY_WORD.get(word);
  return verb && { verb, thing, when };
}

const isSnug = (word: string | number): boolean => {
  const c = decode(String(word));
  return c.torqued + c.snug === size(c);
};

/** The verb that takes away what was put on a thing for the job. */
const UNDOES: Readonly<Partial<Record<StateFact['said']['what'], string>>> = {
  chocked: 'unchock',
  tagged: 'untag',
  tied: 'untie',
};

/** The verb that brings the thing of a fact back. */
function verbFor({ group, thing, detail, said }: StateFact): VerbDef | undefined {
  const tighten = hasClause(thing, 'torque') ? 'torque' : 'tighten';
  const words: Readonly<Record<StateFact['group'], string>> = {
    off: 'install',
    hung: 'install',
    disconnected: 'connect',
    capped: 'connect',
    loose: tighten,
    untorqued: tighten,
    drained: 'fill',
    unbled: 'bleed',
    raised: thing.name === 'suspension' ? 'unload' : 'lower',
    placed: UNDOES[said.what] ?? (thing.kind === 'temporary' ? 'remove' : ''),
    changed: thing.kind === 'condition' ? 'set' : 'move',
    disturbed: 'adjust',
    owed: detail === 'level to be checked' ? 'check-level' : '',
    clock: '',
  };
  return VERB_BY_WORD.get(words[group]);
}
