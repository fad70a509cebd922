// How many things are off the vehicle and how many wait for their torque after each row, for one combination. Read
// from the run of the work, never counted by hand: the path taken is the planned one, where every test passes.
import {
  type Act,
  type Condition,
  decodeCounts,
  hasClause,
  type Job,
  type Line,
  type StateRun,
  sizeOfCounts,
  type Thing,
} from '@baywright/language';

export interface Trace {
  /** The act of a line that comes next, undefined when the line does nothing on this print. */
  next(line: Line): Act | undefined;
  /** Goes on to an act. With a thing: as far as that one of its objects. */
  goTo(act: Act, thing?: Thing): void;
  /** Goes on over everything the act did. */
  finish(act: Act): void;
  /** Things that are not as they came in, with what they wait for. */
  readonly open: ReadonlyMap<Thing, Open>;
  /** How often that changed so far. */
  readonly changed: number;
  /** Fasteners as they stand: how many stages of their torque are done. */
  stagesDone(thing: Thing): number;
  /** Number of the act reached. */
  readonly at: number;
}

export type Open = 'off' | 'hung' | 'loose';

export function traceOf(run: StateRun | undefined, job: Job, when: Condition): Trace {
  const open = new Map<Thing, Open>();
  const stages = new Map<Thing, number>();
  let done = 0;
  let at = -1;
  let changed = 0;
  const combination = job.universe.diagrams.some(when) ?? new Map<number, number>();
  const changes = run?.machine.changes ?? [];
  const acts = run?.machine.acts ?? [];
  const apply = (limit: number, wanted: (act: number, thing: Thing) => boolean): void => {
    for (let i = done; i < changes.length; i++) {
      const change = changes[i];
      if (!change || change.act > limit) break;
      const info = change.cell;
      if (!wanted(change.act, info.thing)) continue;
      const value = change.to.find((choice) => job.universe.diagrams.holds(choice.when, combination))?.value;
      if (value === undefined) continue;
      if (info.aspect === 'tight') stages.set(info.thing, decodeCounts(String(value)).stage);
      const state = openState(info.thing, info.aspect, String(value));
      if (state === 'other' || state === open.get(info.thing)) continue;
      if (state === undefined) open.delete(info.thing);
      else open.set(info.thing, state);
      changed++;
    }
  };
  const settle = (limit: number): void => {
    apply(limit, () => true);
    while (done < changes.length && (changes[done]?.act ?? 0) <= limit) done++;
  };
  return {
    open,
    get at() {
      return at;
    },
    get changed() {
      return changed;
    },
    stagesDone: (thing) => stages.get(thing) ?? 0,
    next: (line) => acts.find((act) => act.index > at && act.line === line),
    goTo(act, thing) {
      settle(act.index - 1);
      if (thing) apply(act.index, (by, changed) => by < act.index || changed === thing);
    },
    finish(act) {
      settle(act.index);
      at = Math.max(at, act.index);
    },
  };
}

/** Whether a thing counts as off or loose; `other` for aspects that do not tell. */
function openState(thing: Thing, aspect: string, value: string): Open | undefined | 'other' {
  if (aspect === 'place') return value === 'in' ? undefined : value === 'hung' ? 'hung' : 'off';
  if (aspect === 'link') return value === 'connected' ? undefined : 'off';
  if (aspect !== 'tight') return 'other';
  const counts = decodeCounts(value);
  if (counts.out > 0) return 'off';
  if (counts.torqued === sizeOfCounts(counts)) return undefined;
  return hasClause(thing, 'no torque') && counts.loose === 0 ? undefined : 'loose';
}
