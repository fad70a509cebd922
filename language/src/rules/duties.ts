// What a rule has on its mind: a value for each thing it is about, on all combinations at once.
import { constant, forgotten, type Guarded, replaced } from '../state/guarded.js';
import type { Machine } from '../state/machine.js';
import { type Condition, NEVER } from '../variants/diagrams.js';

/** The key of a rule that is not about `it`. */
export const ALL = '*';

export interface Owed {
  readonly when: Condition;
  /** The first act that set it so, -1 when none did. */
  readonly by: number;
  /** The outcomes on which it came about, in words, when the run has forgotten them since. */
  readonly path: string | undefined;
}

export class Duties {
  readonly #m: Machine;
  readonly #first: string;
  readonly #cells = new Map<string, Guarded>();
  readonly #paths = new Map<string, string>();

  /** `first` is the value before any act. */
  constructor(m: Machine, first: string) {
    this.#m = m;
    this.#first = first;
  }

  keys(): string[] {
    return [...this.#cells.keys()];
  }

  put(key: string, when: Condition, value: string, by: number): void {
    this.#cells.set(key, replaced(this.#m.d, this.#read(key), when, value, by));
  }

  /** Puts `to` only where the value is `from`. */
  advance(key: string, when: Condition, from: string, to: string, by: number): void {
    const at = this.find(key, (v) => v === from, when).when;
    if (at !== NEVER) this.put(key, at, to, by);
  }

  find(key: string, test: (value: string) => boolean, when: Condition): Owed {
    const { d } = this.#m;
    const choices = this.#read(key).filter((c) => test(String(c.value)) && d.and(c.when, when) !== NEVER);
    const first = choices.reduce<(typeof choices)[number] | undefined>(
      (a, b) => (a && a.by <= b.by ? a : b),
      undefined,
    );
    return {
      when: choices.reduce<Condition>((c, x) => d.or(c, d.and(x.when, when)), NEVER),
      by: first?.by ?? -1,
      path: this.#paths.get(`${key} ${first?.by}`),
    };
  }

  forget(variable: number): void {
    const { d, alive, job } = this.#m;
    for (const [key, guarded] of this.#cells) {
      for (const c of guarded) {
        const path =
          c.by >= 0 && d.mentions(c.when, variable) ? job.universe.words(d.and(c.when, alive)) : undefined;
        if (path !== undefined) this.#paths.set(`${key} ${c.by}`, path);
      }
      this.#cells.set(key, forgotten(d, guarded, variable, alive));
    }
  }

  #read(key: string): Guarded {
    return this.#cells.get(key) ?? constant(this.#first);
  }
}
