/**
 * Time of a job: hands-on, waiting and elapsed, by the critical path of one technician working the steps in the
 * order written while clocks (cure, settle, cool) run beside other work. Minutes throughout.
 */

/** A clock a step must wait for: it starts when an earlier step ends. */
export interface Clock {
  readonly since: string;
  readonly minutes: number;
  /** What runs: `gasket maker cures`. */
  readonly name: string;
}

/** One step as the clockwork sees it. */
export interface TimedStep {
  readonly id: string;
  readonly handsOnMin: number;
  /** Waiting inside the step that nothing can overlap (`wait 10 min`), minutes. */
  readonly waitMin?: number;
  readonly after?: readonly Clock[];
}

/** When a step is done and what held it up. */
export interface StepTime {
  readonly id: string;
  readonly startMin: number;
  readonly endMin: number;
  /** Minutes stood still before the start. */
  readonly idleMin: number;
  readonly heldBy?: Clock;
}

/** The timing of a job. elapsed = hands-on + waiting. */
export interface Timeline {
  readonly handsOnMin: number;
  readonly waitingMin: number;
  readonly elapsedMin: number;
  /** Minutes of clocks that ran while other work went on. */
  readonly overlappedMin: number;
  readonly steps: readonly StepTime[];
  /** Steps (and the clocks between them) that decide the elapsed time, first to last. */
  readonly criticalPath: readonly string[];
}

/**
 * Works out a timeline. A step starts when the one before it ends and every clock it names has run. A clock that
 * names a step not yet done is ignored here; the checker reports it.
 */
export function timeline(steps: readonly TimedStep[]): Timeline {
  const done = new Map<string, StepTime>();
  const times: StepTime[] = [];
  let now = 0;
  let handsOnMin = 0;
  let waitingMin = 0;
  let clockMin = 0;
  for (const step of steps) {
    let startMin = now;
    let heldBy: Clock | undefined;
    for (const clock of step.after ?? []) {
      const from = done.get(clock.since);
      if (!from) continue;
      clockMin += clock.minutes;
      if (from.endMin + clock.minutes > startMin) {
        startMin = from.endMin + clock.minutes;
        heldBy = clock;
      }
    }
    const idleMin = startMin - now;
    const inside = step.waitMin ?? 0;
    now = startMin + step.handsOnMin + inside;
    handsOnMin += step.handsOnMin;
    waitingMin += idleMin + inside;
    const time = { id: step.id, startMin, endMin: now, idleMin, ...(heldBy ? { heldBy } : {}) };
    times.push(time);
    done.set(step.id, time);
  }
  const idle = times.reduce((sum, t) => sum + t.idleMin, 0);
  return {
    handsOnMin,
    waitingMin,
    elapsedMin: now,
    overlappedMin: Math.max(0, clockMin - idle),
    steps: times,
    criticalPath: criticalPath(times),
  };
}

/** Back from the last step: over the clock that held a step, else over the step before it. */
function criticalPath(times: readonly StepTime[]): string[] {
  const path: string[] = [];
  let index = times.length - 1;
  while (index >= 0) {
    const time = times[index];
    if (!time) break;
    path.push(time.id);
    const held = time.heldBy;
    const from = held ? times.findIndex((t) => t.id === held.since) : index - 1;
    if (held) path.push(held.name);
    index = from;
  }
  return path.reverse();
}

/** Declared labour against the steps. */
export interface LabourCheck {
  readonly verdict: 'agrees' | 'too short' | 'too long';
  readonly declaredMin: number;
  readonly handsOnMin: number;
  readonly elapsedMin: number;
}

/**
 * Compares declared labour (minutes) with a timeline: too short under half of hands-on, too long over six times
 * hands-on where waiting does not explain it. Usual minutes of verbs are those of the bare action; fetching, cleaning
 * up and what will not come off make the labour that a shop declares one to four times as long (common practice), so
 * only a gap beyond that is worth a word.
 */
export function labourCheck(declaredMin: number, time: Timeline): LabourCheck {
  const verdict =
    declaredMin < time.handsOnMin * SHORT_SHARE
      ? 'too short'
      : declaredMin > Math.max(time.handsOnMin * LONG_TIMES, time.elapsedMin)
        ? 'too long'
        : 'agrees';
  return { verdict, declaredMin, handsOnMin: time.handsOnMin, elapsedMin: time.elapsedMin };
}

const SHORT_SHARE = 0.5;
const LONG_TIMES = 6;

/** `1 h 40 min`, `25 min`: minutes as a technician says them, rounded to whole ones. */
export function timeText(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
