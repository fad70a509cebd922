// The state of the vehicle on all combinations and paths at once: cells of guarded values, clocks, and marks for
// what has been assumed after a finding so that one cause speaks once.
import type { Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { type Condition, type Diagrams, NEVER } from '../variants/diagrams.js';
import type { Act } from './act.js';
import { type Aspect, initialValue } from './aspects.js';
import { Clocks } from './clocks.js';
import type { Deficit } from './deficit.js';
import type { Want } from './wants.js';
import { changed, forgotten, type Guarded, replaced, type Value, whereSome } from './guarded.js';

/** A change of one cell, for "state at this line". */
export interface Change {
  readonly act: number;
  readonly key: string;
  readonly to: Guarded;
}

/** A thing set to what was needed, after its lack was noted. */
export interface Assumption {
  readonly deficit: Deficit;
  readonly want: Want;
  when: Condition;
}

export interface CellInfo {
  readonly thing: Thing;
  readonly aspect: Aspect;
}

export class Machine {
  readonly job: Job;
  readonly d: Diagrams;
  readonly clocks: Clocks;
  /** Acts so far; the index of an act is its place here. */
  readonly acts: Act[] = [];
  readonly changes: Change[] = [];
  /** What broken house rules found lacking. */
  readonly ruled: Deficit[] = [];
  /** Clauses that house rules ask of a statement, such as `with hoist`; fixes write them. */
  readonly demands: ((verb: string, thing: Thing) => string | undefined)[] = [];
  /** Combinations and paths on which the procedure still goes on. */
  alive: Condition;
  readonly #cells = new Map<string, Guarded>();
  readonly #info = new Map<string, CellInfo>();
  readonly #muted = new Map<string, Condition>();
  readonly #assumed = new Map<string, Assumption[]>();
  readonly #pinned: ReadonlyMap<string, string>;

  constructor(job: Job, pinned: ReadonlyMap<string, string>) {
    this.job = job;
    this.d = job.universe.diagrams;
    this.clocks = new Clocks(this.d);
    this.alive = job.universe.domain;
    this.#pinned = pinned;
  }

  /**
   * The vehicle as it stood after the act of this index, to ask what could be done there; -1 for as it came in. Clocks
   * and assumptions are not carried over: what only time forbids counts as possible.
   */
  asAfter(act: number): Machine {
    const then = new Machine(this.job, this.#pinned);
    then.acts.push(...this.acts.slice(0, act + 1));
    for (const change of this.changes) {
      const { act: by, key, to } = change;
      if (by > act) continue;
      then.changes.push(change);
      const info = this.#info.get(key);
      if (info) then.#info.set(key, info);
      then.#cells.set(key, to);
    }
    return then;
  }

  read(thing: Thing, aspect: Aspect): Guarded {
    return this.#cells.get(`${aspect} ${thing.id}`) ?? initialValue(this.job, thing, aspect, this.#pinned);
  }

  /** Where the aspect may have a value that satisfies the test; muted things satisfy any test. */
  where(thing: Thing, aspect: Aspect, test: (value: Value) => boolean): Condition {
    return this.d.or(whereSome(this.d, this.read(thing, aspect), test), this.muted(thing));
  }

  /** Where the aspect may fail the test: never where the thing is muted. */
  fails(thing: Thing, aspect: Aspect, test: (value: Value) => boolean): Condition {
    return this.d.minus(whereSome(this.d, this.read(thing, aspect), (v) => !test(v)), this.muted(thing));
  }

  change(thing: Thing, aspect: Aspect, when: Condition, change: (value: Value) => Value, by: number): void {
    const before = this.read(thing, aspect);
    this.#store(thing, aspect, before, changed(this.d, before, when, change, by), by);
  }

  put(thing: Thing, aspect: Aspect, when: Condition, value: Value, by: number): void {
    const before = this.read(thing, aspect);
    this.#store(thing, aspect, before, replaced(this.d, before, when, value, by), by);
  }

  /** The value a condition must come back to: its first, or the one the prerequisites ask for. */
  rest(condition: Thing): string {
    return this.#pinned.get(condition.name) ?? condition.values[0]?.text ?? '';
  }

  /** Cells that have been written so far. */
  cells(): Iterable<[CellInfo, Guarded]> {
    return [...this.#cells].map(([key, value]) => [this.#info.get(key) as CellInfo, value]);
  }

  cellInfo(key: string): CellInfo | undefined {
    return this.#info.get(key);
  }

  /** Where nothing is known of the thing, since a line that names it could not be read. */
  muted(thing: Thing): Condition {
    return this.#muted.get(thing.id) ?? NEVER;
  }

  mute(thing: Thing, when: Condition): void {
    this.#muted.set(thing.id, this.d.or(this.muted(thing), when));
  }

  /** Marks that the thing was set to what was needed. */
  assume(thing: Thing, want: Want, when: Condition, deficit: Deficit): void {
    const list = this.#assumed.get(thing.id) ?? [];
    list.push({ deficit, want, when });
    this.#assumed.set(thing.id, list);
  }

  assumptions(thing: Thing): readonly Assumption[] {
    return this.#assumed.get(thing.id) ?? [];
  }

  /** Where the thing is in an assumed state, whichever way. */
  assumedWhere(thing: Thing): Condition {
    return this.assumptions(thing).reduce((c, a) => this.d.or(c, a.when), NEVER);
  }

  /** Drops the marks that the test asks for, inside a condition. */
  clearAssumptions(thing: Thing, when: Condition, test: (want: Want) => boolean): void {
    const left = this.assumptions(thing).filter((a) => {
      if (test(a.want)) a.when = this.d.minus(a.when, when);
      return a.when !== NEVER;
    });
    this.#assumed.set(thing.id, left);
  }

  /** Forgets an outcome once no later line asks for it. */
  forget(variable: number): void {
    for (const [key, value] of this.#cells) {
      const next = forgotten(this.d, value, variable, this.alive);
      if (next !== value) this.#cells.set(key, next);
    }
    for (const list of this.#assumed.values()) for (const a of list) a.when = this.d.forget(a.when, variable);
    for (const [id, when] of this.#muted) this.#muted.set(id, this.d.forget(when, variable));
    this.clocks.forget(variable, this.alive);
    this.alive = this.d.forget(this.alive, variable);
  }

  #store(thing: Thing, aspect: Aspect, before: Guarded, after: Guarded, by: number): void {
    const key = `${aspect} ${thing.id}`;
    if (after === before && this.#cells.has(key)) return;
    if (!this.#info.has(key)) this.#info.set(key, { thing, aspect });
    this.#cells.set(key, after);
    this.changes.push({ act: by, key, to: after });
  }
}

