// The state of the vehicle on all combinations and paths at once: cells of guarded values, clocks, and marks for
// what has been assumed after a finding so that one cause speaks once.
import type { Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { type Condition, type Diagrams, NEVER } from '../variants/diagrams.js';
import type { Act } from './act.js';
import { type Aspect, initialValue } from './aspects.js';
import { Clocks } from './clocks.js';
import type { Deficit } from './deficit.js';
import { changed, forgotten, type Guarded, replaced, type Value, whereSome } from './guarded.js';
import type { Want } from './wants.js';

/** A change of one cell, for "state at this line". */
export interface Change {
  readonly act: number;
  readonly cell: CellInfo;
  readonly to: Guarded;
}

/** A thing set to what was needed, after its lack was noted. */
export interface Assumption {
  readonly deficit: Deficit;
  readonly want: Want;
  when: Condition;
}

/** What a cell is of. There is one object for each cell of a machine, so that it serves as key. */
export interface CellInfo {
  readonly thing: Thing;
  readonly aspect: Aspect;
}

interface Cell extends CellInfo {
  value: Guarded;
}

const NONE: readonly Assumption[] = [];

/** Lives for one run. Everything is asked and changed inside a condition: the combinations and paths it holds on. */
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
  /** The cells that were ever written, in that order, and those of each thing: at most four. */
  readonly #cells: Cell[] = [];
  readonly #cellsOf = new Map<Thing, Cell[]>();
  readonly #muted = new Map<Thing, Condition>();
  readonly #assumed = new Map<Thing, Assumption[]>();
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
      const { act: by, cell, to } = change;
      if (by > act) continue;
      then.changes.push(change);
      then.#write(cell.thing, cell.aspect, to);
    }
    return then;
  }

  /** One aspect of a thing on all combinations. */
  read(thing: Thing, aspect: Aspect): Guarded {
    return this.#cell(thing, aspect)?.value ?? initialValue(this.job, thing, aspect, this.#pinned);
  }

  /** Where the aspect may have a value that satisfies the test; muted things satisfy any test. */
  where(thing: Thing, aspect: Aspect, test: (value: Value) => boolean): Condition {
    return this.d.or(whereSome(this.d, this.read(thing, aspect), test), this.muted(thing));
  }

  /** Where the aspect may fail the test: never where the thing is muted. */
  fails(thing: Thing, aspect: Aspect, test: (value: Value) => boolean): Condition {
    return this.d.minus(
      whereSome(this.d, this.read(thing, aspect), (v) => !test(v)),
      this.muted(thing),
    );
  }

  /** Changes the value inside `when`; the act `by` answers for it only where it did change. */
  change(thing: Thing, aspect: Aspect, when: Condition, change: (value: Value) => Value, by: number): void {
    const before = this.read(thing, aspect);
    this.#store(thing, aspect, before, changed(this.d, before, when, change, by), by);
  }

  /** Sets the value inside `when`; the act `by` answers for it also where it was so before. */
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
    return this.#cells.map((cell) => [cell, cell.value]);
  }

  /** Where nothing is known of the thing, since a line that names it could not be read. */
  muted(thing: Thing): Condition {
    return this.#muted.size === 0 ? NEVER : (this.#muted.get(thing) ?? NEVER);
  }

  /** From here on nothing is known of the thing inside `when`, and nothing is told of it. */
  mute(thing: Thing, when: Condition): void {
    this.#muted.set(thing, this.d.or(this.muted(thing), when));
  }

  /** Marks that the thing was set to what was needed. */
  assume(thing: Thing, want: Want, when: Condition, deficit: Deficit): void {
    const list = this.#assumed.get(thing) ?? [];
    list.push({ deficit, want, when });
    this.#assumed.set(thing, list);
  }

  assumptions(thing: Thing): readonly Assumption[] {
    return this.#assumed.size === 0 ? NONE : (this.#assumed.get(thing) ?? NONE);
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
    this.#assumed.set(thing, left);
  }

  /** Forgets an outcome once no later line asks for it. */
  forget(variable: number): void {
    for (const cell of this.#cells) cell.value = forgotten(this.d, cell.value, variable, this.alive);
    for (const list of this.#assumed.values()) for (const a of list) a.when = this.d.forget(a.when, variable);
    for (const [thing, when] of this.#muted) this.#muted.set(thing, this.d.forget(when, variable));
    this.clocks.forget(variable, this.alive);
    this.alive = this.d.forget(this.alive, variable);
  }

  #store(thing: Thing, aspect: Aspect, before: Guarded, after: Guarded, by: number): void {
    if (after === before && this.#cell(thing, aspect)) return;
    this.changes.push({ act: by, cell: this.#write(thing, aspect, after), to: after });
  }

  #write(thing: Thing, aspect: Aspect, value: Guarded): Cell {
    const known = this.#cell(thing, aspect);
    if (known) {
      known.value = value;
      return known;
    }
    const cell: Cell = { thing, aspect, value };
    this.#cells.push(cell);
    const cells = this.#cellsOf.get(thing);
    if (cells) cells.push(cell);
    else this.#cellsOf.set(thing, [cell]);
    return cell;
  }

  #cell(thing: Thing, aspect: Aspect): Cell | undefined {
    const cells = this.#cellsOf.get(thing);
    if (cells) for (const cell of cells) if (cell.aspect === aspect) return cell;
    return undefined;
  }
}
