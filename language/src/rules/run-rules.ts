// House rules as automata that run along with the state, on all combinations and paths.
import { type Finding, finding } from '../diagnostics/define.js';
import { houseRule } from '../diagnostics/s403-house-rule.js';
import { usualPractice } from '../diagnostics/s404-usual-practice.js';
import type { Job } from '../names/job.js';
import { allThings } from '../names/job.js';
import { hasClause, type Thing } from '../names/model.js';
import { minutes } from '../names/figures.js';
import type { Act } from '../state/act.js';
import { assumeLack } from '../state/assume.js';
import type { Deficit, Lack } from '../state/deficit.js';
import { constant, forgotten, type Guarded, replaced } from '../state/guarded.js';
import type { Machine } from '../state/machine.js';
import type { Listener } from '../state/run.js';
import { directionOf } from '../state/wants.js';
import type { StepLine } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { answersMessage, isTarget, matchAct, mayMatch } from './match.js';
import { readRule, type Required, type Rule } from './rule-model.js';
import { starterRules } from './starter.js';
import { stateTest } from './state-words.js';

export interface RuleRun {
  readonly listen: (m: Machine) => readonly Listener[];
  /** What was broken, without what a state finding on the same things says better. `told` are the things of those. */
  findings(told: ReadonlySet<Thing>): readonly Finding[];
  readonly rules: readonly Rule[];
}

export function runRules(job: Job, off: ReadonlySet<string> = new Set()): RuleRun {
  const house = [...job.scope.names.values()].filter((t) => t.kind === 'rule').map((t) => readRule(t, false)).filter((r) => r !== undefined);
  const rules = [...house, ...(off.has('all') ? [] : starterRules().filter((r) => !off.has(r.thing.name)))];
  const found: Broken[] = [];
  return { rules, findings: (told) => withoutTwins(found.filter((b) => !saidBetter(b, told)).map((b) => b.finding)), listen: (m) => rules.map((rule) => new Automaton(m, rule, found)) };
}

/** A broken rule with the things it is about: what it asks for, or what is in the state that it forbids. */
interface Broken {
  readonly finding: Finding;
  readonly things: readonly Thing[];
}

/** A thing that is never put right has a finding at the line that left it so; the rule adds nothing to it. */
function saidBetter(broken: Broken, told: ReadonlySet<Thing>): boolean {
  return broken.things.length > 0 && broken.things.every((t) => told.has(t));
}

/** Usual practice is not told where a house rule already speaks of the same line. */
function withoutTwins(found: readonly Finding[]): Finding[] {
  return found.filter((f) => f.code !== usualPractice.code || !found.some((o) => o.code === houseRule.code && o.span.start === f.span.start && o.file === f.file));
}

const MET = 'met';
const OWED = 'owed';

class Automaton implements Listener {
  readonly #m: Machine;
  readonly #rule: Rule;
  readonly #found: Broken[];
  /** Duties by the thing they are about; `*` when the rule is not about `it`. */
  readonly #duties = new Map<string, Guarded>();
  readonly #told = new Set<StepLine | undefined>();
  readonly #counts = new Map<string, Guarded>();

  constructor(m: Machine, rule: Rule, found: Broken[]) {
    this.#m = m;
    this.#rule = rule;
    this.#found = found;
    const { form } = rule;
    if (form.head === 'every') m.demands.push((verb, thing) => this.#demand(form, verb, thing));
    if (form.head === 'before' && form.required.form === 'wait' && !form.since) m.clocks.start(this.#clock, 'least', minutes(form.required.time) ?? 0, m.alive, -1);
  }

  get #clock(): string {
    return `rule ${this.#rule.thing.id}`;
  }

  act(act: Act, failed: boolean): void {
    const { form } = this.#rule;
    switch (form.head) {
      case 'after':
        this.#after(act, failed, form);
        break;
      case 'before':
        this.#before(act, failed, form);
        break;
      case 'never':
        if (!failed) this.#never(act, form);
        break;
      case 'every':
        if (!failed) this.#every(act, form);
        break;
    }
  }

  #after(act: Act, failed: boolean, form: Extract<Rule['form'], { head: 'after' }>): void {
    for (const key of [...this.#duties.keys()]) {
      const it = key === '*' ? undefined : this.#thing(key);
      const owed = this.#where(key, OWED, act.when);
      if (owed.when === NEVER) continue;
      if (this.#meets(form.required, act, it)) this.#set(key, act.when, MET, act.index);
      else if (form.until === 'next' ? act.statement !== undefined : typeof form.until === 'object' && matchAct(form.until, act, it)) this.#owing(key, owed, act);
    }
    const things = matchAct(form.pattern, act, undefined);
    if (!things || failed) return;
    const aboutIt = form.required.form === 'act' && form.required.pattern.target?.form === 'it';
    for (const thing of aboutIt ? things : [undefined]) {
      if (thing && this.#renewsItself(thing, form.required)) continue;
      const quiet = thing ? this.#m.d.or(this.#m.assumedWhere(thing), this.#m.muted(thing)) : NEVER;
      this.#set(thing?.id ?? '*', this.#m.d.minus(act.when, quiet), OWED, act.index);
    }
  }

  stepEnds(_step: StepLine, when: Condition): void {
    const { form } = this.#rule;
    if (form.head === 'after' && form.until === 'step ends') for (const key of this.#duties.keys()) this.#owing(key, this.#where(key, OWED, when), undefined);
  }

  waited(): void {}

  end(when: Condition): void {
    const { form } = this.#rule;
    if (form.head === 'after') for (const key of this.#duties.keys()) this.#owing(key, this.#where(key, OWED, when), undefined);
  }

  forget(variable: number): void {
    for (const map of [this.#duties, this.#counts]) for (const [key, g] of map) map.set(key, forgotten(this.#m.d, g, variable, this.#m.alive));
  }

  #before(act: Act, failed: boolean, form: Extract<Rule['form'], { head: 'before' }>): void {
    const { required } = form;
    const wait = required.form === 'wait' ? (minutes(required.time) ?? 0) : undefined;
    const things = matchAct(form.pattern, act, undefined);
    if (things && !failed) {
      const aboutIt = required.form === 'act' && required.pattern.target?.form === 'it';
      for (const thing of aboutIt ? things : [undefined]) {
        const key = thing?.id ?? '*';
        const missing = wait === undefined ? this.#unmet(key, act.when) : this.#tooSoon(wait, act.when);
        if (missing === NEVER) continue;
        this.#tell(act, missing, [], act.step);
        this.#set(key, missing, MET, act.index);
        if (wait !== undefined) this.#m.clocks.stop(this.#clock, missing, act.index);
      }
    }
    if (form.since && matchAct(form.since, act, undefined)) {
      if (wait !== undefined) this.#m.clocks.start(this.#clock, 'least', wait, act.when, act.index);
      else for (const key of this.#duties.keys()) this.#set(key, act.when, OWED, act.index);
    }
    if (required.form === 'message' ? answersMessage(act, required.message) : required.form === 'act' && this.#meets(required, act, undefined)) this.#set('*', act.when, MET, act.index);
    if (required.form === 'act' && required.pattern.target?.form === 'it') {
      for (const object of act.statement?.objects ?? []) if (object.thing && matchAct(required.pattern, act, object.thing)) this.#set(object.thing.id, act.when, MET, act.index);
    }
  }

  #tooSoon(wait: number, when: Condition): Condition {
    const short = this.#m.clocks.short(this.#clock, wait, when).reduce<Condition>((c, s) => this.#m.d.or(c, s.when), NEVER);
    return this.#told.has(undefined) ? short : this.#m.d.or(short, this.#m.clocks.stopped(this.#clock, when));
  }

  #never(act: Act, form: Extract<Rule['form'], { head: 'never' }>): void {
    if (!matchAct(form.pattern, act, undefined)) return;
    const { target, not, state } = form.state;
    const named = allThings(this.#m.job.scopes).filter((t) => isTarget(target, t, undefined));
    const lacks: Lack[] = [];
    for (const thing of named) {
      const test = stateTest(thing, state.text);
      if (!test) continue;
      const at = this.#m.d.and(act.when, this.#m.job.exists(thing));
      const bad = this.#m.d.and(at, this.#m.fails(thing, test.aspect, (v) => test.test(String(v)) === not));
      if (bad !== NEVER) {
        const maker = this.#m.read(thing, test.aspect).find((c) => this.#m.d.and(c.when, bad) !== NEVER)?.by ?? -1;
        const other = thing.values.find((v) => v.text !== state.text)?.text;
        lacks.push({ thing, want: test.otherwise, when: bad, maker, ...(other === undefined ? {} : { value: other }) });
      }
    }
    if (lacks.length === 0) return;
    const when = lacks.reduce<Condition>((c, l) => this.#m.d.or(c, l.when), NEVER);
    this.#tell(act, when, lacks.map((l) => this.#m.acts[l.maker]).filter((a) => a !== undefined), act.step, lacks.map((l) => l.thing));
    // What must be put back anyway is left as it is: if it never is, its own finding speaks.
    if (lacks.every((l) => directionOf(l.want) === 'together')) return;
    const deficit: Deficit = { act, need: 'end', about: [], lacks, silent: true, also: new Map(), late: [], arrived: new Map() };
    if (not) return;
    this.#m.ruled.push(deficit);
    for (const lack of lacks) assumeLack(this.#m, lack, deficit);
  }

  #every(act: Act, form: Extract<Rule['form'], { head: 'every' }>): void {
    const things = matchAct(form.pattern, act, undefined);
    if (!things) return;
    if (form.needs) {
      const { needs } = form;
      const given = act.statement?.clauses.some((c) => c.word === needs.word && needs.items.every((i) => c.items.some((x) => x.name.text === i.name.text)));
      if (!given) this.#tell(act, act.when, [], act.step);
      return;
    }
    for (const thing of things) {
      const g = this.#counts.get(thing.id) ?? constant(0);
      const again = g.filter((c) => c.value !== 0).reduce<Condition>((c, x) => this.#m.d.or(c, this.#m.d.and(x.when, act.when)), NEVER);
      if (again !== NEVER) this.#tell(act, again, g.map((c) => this.#m.acts[c.by]).filter((a) => a !== undefined), act.step);
      this.#counts.set(thing.id, replaced(this.#m.d, g, act.when, 1, act.index));
    }
  }

  /** The clause a statement must have by this rule, as it is written. */
  #demand(form: Extract<Rule['form'], { head: 'every' }>, verb: string, thing: Thing): string | undefined {
    const { pattern, needs } = form;
    if (!needs || !pattern.verbs.some((v) => v.text === verb) || !pattern.target || !isTarget(pattern.target, thing, undefined)) return undefined;
    return [needs.word, needs.items.map((i) => i.name.text).join(', ')].filter((x) => x !== '').join(' ');
  }

  /** The things that the rule asks to have something done to. */
  #asked(): Thing[] {
    const { form } = this.#rule;
    const pattern = form.head === 'after' || form.head === 'before' ? (form.required.form === 'act' ? form.required.pattern : undefined) : undefined;
    if (pattern?.target?.form !== 'names') return [];
    return pattern.target.names.map((n) => this.#m.job.scope.resolve(n.text)).filter((t) => t !== undefined);
  }

  #meets(required: Required, act: Act, it: Thing | undefined): boolean {
    if (required.form === 'message') return answersMessage(act, required.message);
    if (required.form === 'wait') return act.statement?.verb.alone?.makes.includes('waited') ?? false;
    return matchAct(required.pattern, act, it) !== undefined || mayMatch(required.pattern, act);
  }

  /** A thing that its entry renews meets a demand to renew it. */
  #renewsItself(thing: Thing, required: Required): boolean {
    return required.form === 'act' && required.pattern.verbs.some((v) => v.text === 'renew') && hasClause(thing, 'renew');
  }

  #thing(id: string): Thing | undefined {
    return allThings(this.#m.job.scopes).find((t) => t.id === id);
  }

  #set(key: string, when: Condition, value: string, by: number): void {
    this.#duties.set(key, replaced(this.#m.d, this.#duties.get(key) ?? constant(MET), when, value, by));
  }

  #where(key: string, value: string, when: Condition): { when: Condition; by: Act | undefined } {
    const choices = (this.#duties.get(key) ?? []).filter((c) => c.value === value && this.#m.d.and(c.when, when) !== NEVER);
    return { when: choices.reduce<Condition>((c, x) => this.#m.d.or(c, this.#m.d.and(x.when, when)), NEVER), by: this.#m.acts[Math.min(...choices.map((c) => c.by))] };
  }

  /** Where a `before` duty has not been met: without an entry it never was. */
  #unmet(key: string, when: Condition): Condition {
    const g = this.#duties.get(key);
    if (!g) return when;
    return g.filter((c) => c.value === OWED || (c.value === MET && c.by === -1)).reduce<Condition>((c, x) => this.#m.d.or(c, this.#m.d.and(x.when, when)), NEVER);
  }

  #owing(key: string, owed: { when: Condition; by: Act | undefined }, before: Act | undefined): void {
    if (owed.when === NEVER || !owed.by) return;
    this.#tell(owed.by, owed.when, before ? [before] : [], owed.by.step);
    this.#set(key, owed.when, MET, owed.by.index);
  }

  #tell(act: Act, when: Condition, others: readonly Act[], step: StepLine | undefined, things: readonly Thing[] = this.#asked()): void {
    if (this.#told.has(step)) return;
    this.#told.add(step);
    const { thing, starter } = this.#rule;
    const def = starter ? usualPractice : houseRule;
    const related = [
      ...others.filter((a) => a !== act).map((a) => ({ ...a.blame, message: 'together with this line' })),
      ...(thing.line && !starter ? [{ file: thing.file, span: thing.line.code, message: 'the rule' }] : []),
    ];
    this.#found.push({ things, finding: finding(def, { ...act.blame, related, variants: this.#m.job.universe.words(when) }, { rule: thing.name, title: thing.title, missing: '' }) });
  }
}

