// Clocks that cure, settling and waiting rules ask about. Least times count written waits only; most times also count
// the verbs' usual minutes. A clock stops counting at its limit, so that it has few values however long the job.
import { type Condition, type Diagrams, NEVER } from '../variants/diagrams.js';
import { constant, forgotten, type Guarded, replaced, whereSome } from './guarded.js';

interface Clock {
  readonly counts: 'least' | 'most';
  readonly limit: number;
  elapsed: Guarded;
}

const STOPPED = 'stopped';

export class Clocks {
  readonly #d: Diagrams;
  readonly #clocks = new Map<string, Clock>();

  constructor(d: Diagrams) {
    this.#d = d;
  }

  /** Starts or restarts a clock; minutes past `limit` are not told apart. */
  start(key: string, counts: Clock['counts'], limit: number, when: Condition, by: number): void {
    const clock = this.#clocks.get(key) ?? { counts, limit, elapsed: constant(STOPPED) };
    clock.elapsed = replaced(this.#d, clock.elapsed, when, 0, by);
    this.#clocks.set(key, clock);
  }

  stop(key: string, when: Condition, by: number): void {
    const clock = this.#clocks.get(key);
    if (clock) clock.elapsed = replaced(this.#d, clock.elapsed, when, STOPPED, by);
  }

  /** Lets time go by. `waited` minutes are certain; `worked` minutes are the usual time of the work. */
  advance(waited: number, worked: number, when: Condition): void {
    for (const clock of this.#clocks.values()) {
      const more = clock.counts === 'least' ? waited : waited + worked;
      if (more <= 0) continue;
      clock.elapsed = clock.elapsed.flatMap((c) => {
        const inside = this.#d.and(c.when, when);
        if (inside === NEVER || typeof c.value !== 'number') return [c];
        const rest = this.#d.minus(c.when, when);
        const later = { ...c, value: Math.min(clock.limit, c.value + more), when: inside };
        return rest === NEVER ? [later] : [{ ...c, when: rest }, later];
      });
    }
  }

  /** Where the clock runs and shows less than `minutes`; `by` tells the act that started it. */
  short(key: string, minutes: number, when: Condition): { when: Condition; minutes: number; by: number }[] {
    return this.#running(key, when).filter(
      (r) => r.minutes < Math.min(minutes, this.#clocks.get(key)?.limit ?? minutes),
    );
  }

  /** Where the clock runs and shows more than `minutes`. */
  over(key: string, minutes: number, when: Condition): { when: Condition; minutes: number; by: number }[] {
    return this.#running(key, when).filter((r) => r.minutes > minutes);
  }

  /** Where the clock does not run. */
  stopped(key: string, when: Condition): Condition {
    const clock = this.#clocks.get(key);
    return clock
      ? this.#d.and(
          when,
          whereSome(this.#d, clock.elapsed, (v) => v === STOPPED),
        )
      : when;
  }

  forget(variable: number, alive: Condition): void {
    for (const clock of this.#clocks.values())
      clock.elapsed = forgotten(this.#d, clock.elapsed, variable, alive);
  }

  #running(key: string, when: Condition): { when: Condition; minutes: number; by: number }[] {
    const out: { when: Condition; minutes: number; by: number }[] = [];
    for (const c of this.#clocks.get(key)?.elapsed ?? []) {
      const inside = this.#d.and(c.when, when);
      if (inside !== NEVER && typeof c.value === 'number')
        out.push({ when: inside, minutes: c.value, by: c.by });
    }
    return out;
  }
}
