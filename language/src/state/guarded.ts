// A value that may differ from combination to combination, with the act that set it on each.
import { ALWAYS, type Condition, type Diagrams, NEVER } from '../variants/diagrams.js';

/** What a cell can hold: a word, or a number of minutes. */
export type Value = string | number;

/** One value, where it holds, and the number of the act that set it; -1 for how the vehicle came in. */
export interface Choice {
  readonly value: Value;
  readonly when: Condition;
  readonly by: number;
}

/** Choices that together cover all combinations. Where two overlap, both are possible. */
export type Guarded = readonly Choice[];

/** The act that stands for how the vehicle came in. */
export const CAME_IN = -1;

const constants = new Map<Value, Guarded>();

/** The value on all combinations, from before the work. There are few, and every thing of a job starts with some. */
export function constant(value: Value): Guarded {
  let guarded = constants.get(value);
  if (!guarded) {
    guarded = [{ value, when: ALWAYS, by: CAME_IN }];
    constants.set(value, guarded);
  }
  return guarded;
}

/** Where some possible value satisfies the test. */
export function whereSome(d: Diagrams, g: Guarded, test: (value: Value) => boolean): Condition {
  let result: Condition = NEVER;
  for (const c of g) if (test(c.value)) result = d.or(result, c.when);
  return result;
}

/** The guarded value with every value inside `when` replaced; `change` may give the value back unchanged. */
export function changed(
  d: Diagrams,
  g: Guarded,
  when: Condition,
  change: (value: Value) => Value,
  by: number,
): Guarded {
  if (when === NEVER) return g;
  const out: Choice[] = [];
  let touched = false;
  for (const c of g) {
    const inside = d.and(c.when, when);
    if (inside === NEVER) {
      out.push(c);
      continue;
    }
    const value = change(c.value);
    if (value === c.value) {
      out.push(c);
      continue;
    }
    touched = true;
    const rest = d.minus(c.when, when);
    if (rest !== NEVER) out.push({ ...c, when: rest });
    out.push({ value, when: inside, by });
  }
  return touched ? merged(d, out) : g;
}

/** The same, but `by` is set even where the value stays: a `set` to the value it has makes this line answer for it. */
export function replaced(d: Diagrams, g: Guarded, when: Condition, value: Value, by: number): Guarded {
  if (when === NEVER) return g;
  const out: Choice[] = [{ value, when, by }];
  for (const c of g) {
    const rest = d.minus(c.when, when);
    if (rest !== NEVER) out.push({ ...c, when: rest });
  }
  return merged(d, out);
}

/** Forgets a variable: values that it told apart become possible together. `alive` limits what can still occur. */
export function forgotten(d: Diagrams, g: Guarded, variable: number, alive: Condition): Guarded {
  if (!g.some((c) => c.when !== ALWAYS && d.mentions(c.when, variable))) return g;
  const out: Choice[] = [];
  for (const c of g) {
    const when = d.forget(d.and(c.when, alive), variable);
    if (when !== NEVER) out.push({ ...c, when });
  }
  return out.length > 0 ? merged(d, out) : g;
}

function merged(d: Diagrams, choices: readonly Choice[]): Guarded {
  if (choices.length < 2) return choices;
  const out: Choice[] = [];
  for (const c of choices) {
    const i = out.findIndex((o) => o.value === c.value && o.by === c.by);
    const same = out[i];
    if (same) out[i] = { ...same, when: d.or(same.when, c.when) };
    else out.push(c);
  }
  return out;
}
