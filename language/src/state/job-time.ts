// How long the work takes: the written lines on one combination of vehicle and side, by the usual minutes of their
// verbs, with the waits among them.
import { minutes } from '../names/figures.js';
import { isEachSide } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import type { EventPattern, LabourLine } from '../syntax/tree.js';
import { type LabourCheck, labourCheck, type TimedStep, type Timeline, timeline } from '../trade/time.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Act } from './act.js';
import type { StateRun } from './run.js';

/** The time of a procedure on the combinations of `when`. */
export interface JobTime extends Timeline {
  readonly when: Condition;
  /** The combinations in words; absent when they are all. */
  readonly variants?: string;
  /** Hands-on minutes of the lines that stand on all of these combinations. */
  readonly leastHandsOnMin: number;
  /** The lines at which the work stands still, and how long, in minutes. */
  readonly waits: readonly { readonly act: Act; readonly min: number }[];
}

/**
 * The time of the work as planned (every test passes, nothing is needed that may not be) where `when` holds: by
 * default wherever the procedure applies. Where lines stand on some of these combinations alone, all are counted:
 * ask about one combination to know it exactly. Lines on what each side has count, with their waits, once for each of
 * `sides`: one side of a job that has sides, or as many as are worked one after the other.
 */
export function jobTime(
  run: StateRun,
  when: Condition = run.machine.job.universe.domain,
  sides = 1,
): JobTime {
  const { universe } = run.machine.job;
  const d = universe.diagrams;
  let planned = when;
  for (const axis of universe.axes)
    if (axis.kind === 'outcome') planned = d.and(planned, d.where(axis.variable, [0]));
  const done = run.machine.acts
    .filter((act): act is DoneAct => act.statement !== undefined)
    .filter((act) => d.and(act.when, planned) !== NEVER);
  const steps = done.map((act, i) => timed(act, act.statement, done, i, sides));
  const time = timeline(steps);
  const acts = new Map(done.map((act) => [idOf(act), act]));
  const waits = time.steps.flatMap(({ id, idleMin }, i) => {
    const act = acts.get(id);
    const min = idleMin + (steps[i]?.waitMin ?? 0);
    return act && min > 0 ? [{ act, min }] : [];
  });
  const variants = universe.words(when);
  return {
    ...time,
    when,
    waits,
    leastHandsOnMin: done.reduce(
      (sum, act, i) => (d.implies(planned, act.when) ? sum + (steps[i]?.handsOnMin ?? 0) : sum),
      0,
    ),
    ...(variants === undefined ? {} : { variants }),
  };
}

/** A declared labour beside what the steps come to. */
export interface DeclaredLabour extends LabourCheck {
  readonly line: LabourLine;
  readonly time: JobTime;
}

/** Each labour line whose time is written, on the combinations it holds for; one without a guard holds where none of the others does. */
export function declaredLabour(run: StateRun): DeclaredLabour[] {
  const { job } = run.machine;
  const { domain, diagrams: d } = job.universe;
  const { labour } = job.file;
  const guarded = labour.reduce<Condition>((c, l) => (l.guard ? d.or(c, job.where(l.guard)) : c), NEVER);
  return labour.flatMap((line) => {
    const declared = minutes(line.time);
    const when = line.guard ? d.and(domain, job.where(line.guard)) : d.minus(domain, guarded);
    if (declared === undefined || when === NEVER) return [];
    const time = jobTime(run, when);
    return [{ line, time, ...labourCheck(declared, time) }];
  });
}

/** An act that does something, as a message does not. */
type DoneAct = Act & { readonly statement: BoundStatement };

/** The step that an act makes; `at` is its place among all that are done. */
function timed(
  act: Act,
  statement: BoundStatement,
  done: readonly Act[],
  at: number,
  sides: number,
): TimedStep {
  const step = { id: idOf(act), handsOnMin: handsOn(statement, sides) };
  const wait = written(statement, 'bare') ?? written(statement, 'for');
  if (wait === undefined) return step;
  const event = statement.clause('since')?.event;
  const since = event && done.slice(0, at).findLast((earlier) => isMeant(event, earlier));
  return since
    ? { ...step, after: [{ since: idOf(since), minutes: wait, name: `wait ${act.index}` }] }
    : { ...step, waitMin: wait * timesDone(statement, sides) };
}

/** The minutes that a clause says. */
const written = (statement: BoundStatement, word: string): number | undefined =>
  minutes(statement.clause(word)?.spec?.stages[0]?.measure);

/** Usual minutes of a line: those of its verb for each thing it names. */
function handsOn(statement: BoundStatement, sides: number): number {
  return statement.verb.minutes * Math.max(1, statement.objects.length) * timesDone(statement, sides);
}

/** What each side has is worked on once a side. */
function timesDone({ objects }: BoundStatement, sides: number): number {
  return objects.some(({ thing }) => thing && isEachSide(thing)) ? sides : 1;
}

const idOf = (act: Act): string => String(act.index);

/** Whether an act is the one a `since` counts from. */
function isMeant({ verbs, target }: EventPattern, { statement }: Act): boolean {
  if (!statement || !verbs.some((verb) => verb.text === statement.verb.word)) return false;
  if (target?.form !== 'names') return true;
  return statement.objects.some(({ item }) => target.names.some((name) => name.text === item.name.text));
}
