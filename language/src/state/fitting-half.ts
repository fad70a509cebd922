// Writes the fitting half of a job from its taking-off half. It does not reverse the text: it asks, of the vehicle as
// the work written so far leaves it, what can be done next towards bringing it back together, takes the thing that came
// off last first, and goes on until nothing is left. So the lines proposed satisfy every relation by construction.
import { hasClause, type Thing } from '../names/model.js';
import { NEVER } from '../variants/diagrams.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { VerbDef } from '../vocabulary/verb.js';
import { lacksFor, supposedAct } from './can-do.js';
import { facesOf, sealantOf } from './joints.js';
import type { Machine } from './machine.js';
import { MAKE_RULES } from './make-rules.js';
import type { StateRun } from './run.js';
import { lastActBefore, type StateFact, stateAt } from './state-at.js';

export interface FittingStep {
  readonly title: string;
  /** Statements, without indent. */
  readonly lines: readonly string[];
}

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
  for (let facts = open(run, m, writer); facts.length > 0; facts = open(run, m, writer)) {
    if (!facts.some((fact) => writer.settle(fact))) return writer.result(facts.map((f) => f.thing));
  }
  return writer.result([]);
}

/** What is still open, in the order to try: the latest taken off first within a kind of work. */
function open(run: StateRun, m: Machine, writer: Writer): StateFact[] {
  const facts = stateAt({ ...run, machine: m }, Number.MAX_SAFE_INTEGER).filter(
    (fact) => !writer.gaveUp(fact),
  );
  const fillers = new Set(
    facts
      .filter((f) => f.thing.kind === 'fluid')
      .flatMap((f) => m.job.relations(f.thing, 'fill at').map((r) => r.target)),
  );
  const rank = (fact: StateFact): number => {
    const group = GROUP_ORDER.indexOf(fact.group);
    // The filler stays open until the fluid is in; chocks stay until the wheels carry.
    return group >= 0 && (fillers.has(fact.thing) || fact.thing.kind === 'place')
      ? group + GROUP_ORDER.length
      : group;
  };
  return facts
    .filter((f) => rank(f) >= 0)
    .sort((a, b) => rank(a) - rank(b) || (b.act?.index ?? -1) - (a.act?.index ?? -1));
}

/** Tightening follows fitting at once; fluids and the vehicle's own posture come when all is closed. */
const GROUP_ORDER: readonly StateFact['group'][] = [
  'untorqued',
  'capped',
  'placed',
  'off',
  'hung',
  'disconnected',
  'loose',
  'drained',
  'unbled',
  'owed',
  'disturbed',
  'raised',
  'changed',
];
/** Work that closes the job rather than fits a part. */
const COMPLETES: ReadonlySet<string> = new Set([
  'lower',
  'unchock',
  'untag',
  'set',
  'check-level',
  'adjust',
  'bleed',
]);

class Writer {
  readonly #m: Machine;
  readonly #steps: { title: string; lines: { verb: string; objects: string[] }[]; completes: boolean }[] = [];
  readonly #given = new Set<string>();
  readonly #settled = new Map<string, number>();

  constructor(m: Machine) {
    this.#m = m;
  }

  gaveUp(fact: StateFact): boolean {
    return this.#given.has(`${fact.group} ${fact.thing.id}`);
  }

  /** Writes the line that settles the fact, if it can be done now. Snugs or seals first where that is all that lacks. */
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
    const written = (completes: boolean): FittingStep[] =>
      this.#steps
        .filter((s) => s.completes === completes)
        .map((s) => ({ title: s.title, lines: s.lines.map((l) => `${l.verb} ${l.objects.join(', ')}`) }));
    return { installation: written(false), completion: written(true), left: [...new Set(left)] };
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
    if (lacksFor(m, install, part, dry).some((l) => l.want !== 'wet' && l.want !== 'clean')) return;
    const faces = facesOf(m.job, part);
    for (const face of faces) {
      if (m.where(face, 'clean', (v) => v !== 'clean') === NEVER) continue;
      this.#make(clean, face, dry, undefined);
      this.#write(clean, face, undefined);
    }
    const act = supposedAct(m, apply, dry);
    m.acts.push(act);
    m.change(part, 'joint', dry, () => 'wet', act.index);
    this.#line(
      `Seal ${part.title}`,
      'apply',
      `${sealant.name}${faces[0] ? ` to ${faces.map((f) => f.name).join(', ')}` : ''}`,
      false,
      false,
    );
  }

  /** Does what the verb still asks for, where that is work of its own: wheels snug, a filler open, a sealant cured. */
  #first(verb: VerbDef, fact: StateFact): boolean {
    const lacks = lacksFor(this.#m, verb, fact.thing, fact.when);
    const cure = Math.max(0, ...lacks.filter((l) => l.want === 'cured').map((l) => Number(l.value)));
    if (lacks.length > 0 && lacks.every((l) => l.want === 'cured') && cure > 0) {
      this.#m.clocks.advance(cure, 0, fact.when);
      this.#line('Let it cure', 'wait', cure % 60 === 0 ? `${cure / 60} h` : `${cure} min`, false, false);
      return true;
    }
    const want = verb.word === 'lower' ? 'snug' : verb.word === 'fill' ? 'off' : undefined;
    const helper = VERB_BY_WORD.get(want === 'snug' ? 'snug' : 'remove');
    const wanting = lacks.filter((l) => l.want === want);
    if (!helper || wanting.length === 0 || lacks.some((l) => l.want !== want)) return false;
    for (const { thing, when } of wanting) {
      if (lacksFor(this.#m, helper, thing, when).length > 0) return false;
      this.#make(helper, thing, when, undefined);
      this.#write(helper, thing, undefined);
    }
    return true;
  }

  #write(verb: VerbDef, thing: Thing, fact: StateFact | undefined): void {
    const completes =
      COMPLETES.has(verb.word) || (TIGHTENS.has(verb.word) && this.#steps.at(-1)?.completes === true);
    const value = verb.takesValue
      ? ` ${this.#m.rest(thing)}`
      : verb.word === 'move'
        ? ` to ${thing.values[0]?.text ?? ''}`
        : '';
    const only = fact?.variants === undefined ? '' : `, when ${fact.variants}`;
    this.#line(
      completes ? 'Lower and hand back' : `Fit ${thing.title}`,
      verb.word,
      `${thing.name}${value}${only}`,
      completes,
      value === '' && only === '',
    );
  }

  /** Joins the line to the one before where one verb does both; a part opens a step of its own. */
  #line(title: string, verb: string, object: string, completes: boolean, joins: boolean): void {
    let step = this.#steps.at(-1);
    const opens =
      !step ||
      step.completes !== completes ||
      (!completes &&
        (verb === 'install' || verb === 'apply') &&
        step.lines.some((l) => FINISHES.has(l.verb)));
    if (opens || !step) {
      step = { title, lines: [], completes };
      this.#steps.push(step);
    }
    const last = step.lines.at(-1);
    if (joins && last?.verb === verb && !last.objects.some((o) => o.includes(' '))) last.objects.push(object);
    else step.lines.push({ verb, objects: [object] });
  }
}

const keyOf = ({ group, thing, when }: StateFact): string => `${group} ${thing.id} ${when}`;

/** Seal, snug, wait, then the work itself: more than a handful of lines is never on the way to one thing. */
const MOST_TRIES = 8;

const TIGHTENS: ReadonlySet<string> = new Set(['torque', 'tighten']);

/** After one of these a step is whole, and what is fitted next begins another. */
const FINISHES: ReadonlySet<string> = new Set(['torque', 'tighten', 'snug', 'connect', 'fill', 'wait']);

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
    capped: 'uncap',
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
