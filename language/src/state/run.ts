// Runs a procedure on all combinations and paths at once: walks its work in the order written, splits at `if`,
// joins behind it, follows `perform`, and at the end asks whether the vehicle has come back together.
import { everyLine, type Job, linesOfWork } from '../names/job.js';
import type { FileModel } from '../names/model.js';
import { type Scope, scopeOf } from '../names/scope.js';
import { type BoundStatement, bindStatement } from '../names/statement.js';
import type { Guard, IfLine, Line, PerformLine, StepLine } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Act } from './act.js';
import { applyStatement, type Gathered } from './apply.js';
import { muteNames } from './assume.js';
import { type Deficit, joinsEarlier } from './deficit.js';
import { joinPaths, type PathDifference } from './join.js';
import { Machine } from './machine.js';
import {
  asksTheSame,
  givesResult,
  type Outcome,
  outcomeValues,
  settleMeasured,
  takenWhere,
} from './outcomes.js';
import { wholeLacks } from './whole.js';

/** Hears of every act in order; rules listen. `failed` is true when the act already has a finding. */
export interface Listener {
  act(act: Act, failed: boolean): void;
  stepEnds(step: StepLine, when: Condition): void;
  end(when: Condition): void;
  /** The result of a test is no longer asked for. */
  forget?(variable: number): void;
}

export interface StateRun {
  readonly machine: Machine;
  readonly deficits: readonly Deficit[];
  readonly absent: Gathered['absent'];
  readonly differences: readonly PathDifference[];
  /** Steps and statements that no combination reaches. */
  readonly unreached: readonly Line[];
  /** `perform` lines whose operation leads back to itself, or is not found. */
  readonly performProblems: readonly {
    readonly line: PerformLine;
    readonly file: string;
    readonly problem: 'unknown' | 'cycle';
    readonly way: readonly string[];
  }[];
}

interface Context {
  readonly when: Condition;
  readonly scope: Scope;
  readonly step: StepLine | undefined;
  readonly through: PerformLine | undefined;
  /** Operations being performed, for recursion. */
  readonly chain: readonly string[];
}

export function runProcedure(job: Job, listeners: (m: Machine) => readonly Listener[] = () => []): StateRun {
  return new Runner(job, listeners).run();
}

const NONE: readonly BoundStatement[] = [];

class Runner {
  readonly #job: Job;
  readonly #m: Machine;
  readonly #listeners: readonly Listener[];
  readonly #gathered: Gathered;
  readonly #differences: PathDifference[] = [];
  readonly #unreached: Line[] = [];
  readonly #performProblems: StateRun['performProblems'][number][] = [];
  readonly #scopes = new Map<string, Scope>();
  /** Open outcomes by the name they are asked for. */
  readonly #named = new Map<string, Outcome>();

  constructor(job: Job, listeners: (m: Machine) => readonly Listener[]) {
    this.#job = job;
    this.#m = new Machine(job, pinnedBy(job.file));
    this.#gathered = { deficits: [], ruled: this.#m.ruled, absent: [] };
    this.#listeners = listeners(this.#m);
  }

  run(): StateRun {
    const m = this.#m;
    const context: Context = {
      when: m.alive,
      scope: this.#job.scope,
      step: undefined,
      through: undefined,
      chain: [],
    };
    for (const section of this.#job.file.work) this.#block(section.children, context, undefined);
    this.#end();
    return {
      machine: m,
      deficits: this.#gathered.deficits,
      absent: this.#gathered.absent,
      differences: this.#differences,
      unreached: this.#unreached,
      performProblems: this.#performProblems,
    };
  }

  #end(): void {
    const m = this.#m;
    for (const listener of this.#listeners) listener.end(m.alive);
    const lacks = wholeLacks(m, m.alive, 'end').filter((l) => !joinsEarlier(m.d, this.#gathered.deficits, l));
    const deficit: Deficit = {
      act: undefined,
      need: 'end',
      about: [],
      lacks,
      silent: false,
      also: new Map(),
      late: [],
      arrived: new Map(),
    };
    if (lacks.length > 0) this.#gathered.deficits.push(deficit);
  }

  /** `owner` is the statement the lines stand under, whose result their `if` asks for. */
  #block(lines: readonly Line[], context: Context, owner: BoundStatement | undefined): void {
    let outcome: Outcome | undefined;
    lines.forEach((line, i) => {
      if (line.kind === 'if') outcome = this.#if(line, context, owner, outcome);
      else if (line.kind === 'otherwise') this.#otherwise(line, context, outcome);
      else {
        if (outcome && !owner) this.#closeOutcome(outcome);
        if (!owner) outcome = undefined;
        this.#line(
          line,
          context,
          line.kind === 'statement' ? this.#statementsAfter(lines, i, context) : NONE,
        );
      }
      this.#closeNamed(line.end, context);
    });
    if (outcome) this.#closeOutcome(outcome);
  }

  #statementsAfter(lines: readonly Line[], i: number, context: Context): readonly BoundStatement[] {
    if (lines[i + 1]?.kind !== 'statement') return NONE;
    const found: BoundStatement[] = [];
    for (let at = i + 1; at < lines.length; at++) {
      const line = lines[at];
      const bound =
        line?.kind === 'statement' ? bindStatement(line, context.scope.file.path, context.scope) : undefined;
      if (!bound) break;
      found.push(bound);
      if (!bound.guard) break;
    }
    return found;
  }

  #line(line: Line, context: Context, following: readonly BoundStatement[]): void {
    const m = this.#m;
    const alive = m.d.and(context.when, m.alive);
    if (
      alive === NEVER &&
      (line.kind === 'step' || line.kind === 'statement' || line.kind === 'perform') &&
      context.when !== NEVER
    )
      this.#unreached.push(line);
    if (line.broken || line.kind === 'unread') {
      muteNames(
        m,
        [...everyLine([line])].flatMap((l) => l.tokens.map((t) => t.image)),
        alive,
      );
      if (line.kind === 'statement' || line.kind === 'unread') return;
    }
    switch (line.kind) {
      case 'step':
        this.#block(line.children, { ...context, step: line }, undefined);
        for (const listener of this.#listeners) listener.stepEnds(line, m.d.and(context.when, m.alive));
        break;
      case 'operation':
        this.#block(line.children, context, undefined);
        break;
      case 'statement':
        this.#statement(line, context, following);
        break;
      case 'perform':
        this.#perform(line, context);
        break;
      case 'when':
        this.#block(line.children, this.#narrowed(context, line.guard), undefined);
        break;
      case 'repeat':
        this.#block(line.children, context, undefined);
        this.#block(line.children, context, undefined);
        break;
      case 'message':
        this.#tell(line, context, alive);
        break;
      case 'text':
        // A `stop` that could not be read ends no more than the branch it stands in.
        if (line.word === 'stop' && !(line.broken && m.d.implies(m.alive, context.when)))
          m.alive = m.d.minus(m.alive, context.when);
        else this.#tell(line, context, alive);
        break;
      default:
        break;
    }
  }

  #narrowed(context: Context, guard: Guard | undefined): Context {
    if (!guard) return context;
    return { ...context, when: this.#m.d.and(context.when, this.#job.where(guard)) };
  }

  /** A message, hold or other text line: nothing changes, rules hear of it. */
  #tell(line: Line, context: Context, when: Condition): void {
    if (when === NEVER) return;
    const act = this.#act(line, context, undefined, when, NONE);
    for (const listener of this.#listeners) listener.act(act, false);
  }

  #act(
    line: Line,
    context: Context,
    statement: BoundStatement | undefined,
    when: Condition,
    following: readonly BoundStatement[],
  ): Act {
    const blame = context.through
      ? { file: this.#job.file.path, span: context.through.code }
      : { file: context.scope.file.path, span: line.code };
    const act: Act = {
      index: this.#m.acts.length,
      line,
      file: context.scope.file.path,
      statement,
      when,
      step: context.step,
      following,
      through: context.through,
      blame,
    };
    this.#m.acts.push(act);
    return act;
  }

  #statement(
    line: Extract<Line, { kind: 'statement' }>,
    context: Context,
    following: readonly BoundStatement[],
  ): void {
    const m = this.#m;
    const statement = bindStatement(line, context.scope.file.path, context.scope);
    if (!statement) return;
    const inside = this.#narrowed(context, line.guard);
    const when = m.d.and(inside.when, m.alive);
    if (when !== NEVER) {
      const act = this.#act(line, context, statement, when, following);
      const failed = applyStatement(m, act, this.#gathered);
      m.clocks.advance(0, statement.verb.minutes * Math.max(1, statement.objects.length), when);
      for (const listener of this.#listeners) listener.act(act, failed);
    }
    for (const object of statement.objects) if (object.thing) this.#reopen(object.thing.name, line);
    this.#block(line.children, inside, statement);
  }

  /** A new measurement of a thing gives a new outcome for `if NAME …` lines behind it. */
  #reopen(name: string, from: Line): void {
    const old = this.#named.get(name);
    if (!old) return;
    this.#named.delete(name);
    if (from.start > 0) this.#closeOutcome(old);
  }

  #if(
    line: IfLine,
    context: Context,
    owner: BoundStatement | undefined,
    running: Outcome | undefined,
  ): Outcome | undefined {
    const outcome = this.#outcomeFor(line, context, owner, running);
    outcome.lines.push(line);
    const when = this.#m.d.and(context.when, takenWhere(this.#m.d, outcome.axis, line));
    this.#block(line.children, { ...context, when }, undefined);
    if (line.subject) {
      this.#named.set(line.subject.text, outcome);
      outcome.lastUse = Math.max(outcome.lastUse, this.#lastAsked(line.subject.text, line));
      return undefined;
    }
    return outcome;
  }

  #outcomeFor(
    line: IfLine,
    context: Context,
    owner: BoundStatement | undefined,
    running: Outcome | undefined,
  ): Outcome {
    const asked = line.subject ? this.#named.get(line.subject.text) : running;
    if (asked && asksTheSame(line, asked)) return asked;
    const name = line.subject?.text ?? owner?.objects[0]?.thing?.name ?? '';
    const named = line.subject ? context.scope.resolve(line.subject.text) : undefined;
    const of = line.subject ? [named] : (owner?.objects.map(({ thing }) => thing) ?? []);
    return {
      axis: this.#job.universe.outcome(name, outcomeValues(line)),
      lines: [],
      of: of.filter((thing) => thing !== undefined),
      lastUse: line.end,
    };
  }

  #otherwise(line: Line, context: Context, outcome: Outcome | undefined): void {
    const m = this.#m;
    const before = outcome?.lines.map((l) => takenWhere(this.#m.d, outcome.axis, l)) ?? [];
    const when = before.reduce((c, t) => m.d.minus(c, t), context.when);
    this.#block(line.children, { ...context, when }, undefined);
  }

  /** The end of the last `if` that asks for the name, before it is measured again. */
  #lastAsked(name: string, from: IfLine): number {
    let last = from.end;
    for (const line of linesOfWork(this.#job.file)) {
      if (line.start <= from.start) continue;
      if (
        line.kind === 'statement' &&
        line.items.some((i) => i.name.text === name) &&
        givesResult(line.verb.text)
      )
        break;
      if (line.kind === 'if' && line.subject?.text === name) last = Math.max(last, line.end);
    }
    return last;
  }

  #closeNamed(offset: number, context: Context): void {
    if (context.through) return;
    for (const [name, outcome] of this.#named) {
      if (offset < outcome.lastUse) continue;
      this.#named.delete(name);
      this.#closeOutcome(outcome);
    }
  }

  #closeOutcome(outcome: Outcome): void {
    settleMeasured(this.#m, outcome);
    const difference = joinPaths(this.#m, outcome.axis, outcome.lines, this.#job.file.path);
    if (difference) this.#differences.push(difference);
    for (const listener of this.#listeners) listener.forget?.(outcome.axis.variable.index);
    this.#m.forget(outcome.axis.variable.index);
  }

  #perform(line: PerformLine, context: Context): void {
    const from =
      line.from && !line.from.hole ? this.#job.imports.numbered(line.from.text) : context.scope.file;
    const operation = from?.operations.find((o) => o.name === line.operation?.text);
    const file = context.scope.file.path;
    if (!from || !operation?.line) {
      this.#performProblems.push({ line, file, problem: 'unknown', way: [] });
      return;
    }
    if (context.chain.includes(operation.id)) {
      this.#performProblems.push({
        line: context.through ?? line,
        file: this.#job.file.path,
        problem: 'cycle',
        way: [...context.chain, operation.id],
      });
      return;
    }
    const inside = this.#narrowed(context, line.guard);
    this.#block(
      operation.line.children,
      {
        ...inside,
        scope: this.#scope(from),
        through: context.through ?? line,
        chain: [...context.chain, operation.id],
      },
      undefined,
    );
  }

  #scope(file: FileModel): Scope {
    if (file === this.#job.file) return this.#job.scope;
    let scope = this.#scopes.get(file.path);
    if (!scope) {
      scope = scopeOf(file, this.#job.imports);
      this.#scopes.set(file.path, scope);
    }
    return scope;
  }
}

/** Start values that prerequisites ask for: `forks lowered`. */
function pinnedBy(file: FileModel): Map<string, string> {
  const pinned = new Map<string, string>();
  for (const line of file.prerequisites)
    if (line.kind === 'prerequisite' && line.value) pinned.set(line.name.text, line.value.text);
  return pinned;
}
