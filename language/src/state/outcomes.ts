// The results of tests that `if` lines ask for. A result is a variable like an option: each of its values is a path.
import type { Thing } from '../names/model.js';
import type { IfLine } from '../syntax/tree.js';
import { type Condition, type Diagrams, NEVER } from '../variants/diagrams.js';
import type { Axis } from '../variants/universe.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { Machine } from './machine.js';

/** An outcome of a measurement or inspection that `if` lines ask for. */
export interface Outcome {
  readonly axis: Axis;
  readonly lines: IfLine[];
  /** What was measured, tested or looked at. */
  readonly of: readonly Thing[];
  /** End of the last line that asks for it. */
  lastUse: number;
}

/** Values of an outcome axis; the first is the path that goes on as planned. */
const VALUES = {
  limit: ['within limit', 'below limit', 'above limit'],
  inspection: ['good', 'rejected'],
  need: ['not needed', 'needed'],
} as const;

/** Values of the result that a line asks for, by number. */
const TAKEN: Readonly<Record<NonNullable<IfLine['test']>, readonly number[]>> = {
  within: [0],
  below: [1],
  above: [2],
  outside: [1, 2],
  rejected: [1],
  needed: [1],
};

/** The values that the result a line asks for can have. */
export function outcomeValues({ test }: IfLine): readonly string[] {
  if (test === 'rejected') return VALUES.inspection;
  return test === 'needed' || test === undefined ? VALUES.need : VALUES.limit;
}

/** Whether a line can ask for the result that an earlier line asked for: each `if needed` asks anew. */
export function asksTheSame(line: IfLine, asked: Outcome): boolean {
  const values = outcomeValues(line);
  return values !== VALUES.need && asked.axis.values.length === values.length;
}

/** Where the path of an `if` line is taken. */
export function takenWhere(d: Diagrams, axis: Axis, line: IfLine): Condition {
  return d.where(axis.variable, TAKEN[line.test ?? 'needed']);
}

/**
 * A setting that is put right, or ends the job, where it measures outside its limit needs nothing where it measures
 * inside.
 */
export function settleMeasured(m: Machine, { axis, lines, of }: Outcome): void {
  const taken = m.d.and(
    m.alive,
    lines.reduce((c, line) => m.d.or(c, takenWhere(m.d, axis, line)), NEVER),
  );
  for (const limit of of) {
    for (const { of: setting, when } of m.job.inverse(limit, 'limit')) {
      const isSet = m.where(setting, 'setting', (value) => value === 'set');
      if (m.d.implies(m.d.and(taken, when), isSet))
        m.change(setting, 'setting', m.d.minus(when, taken), () => 'set', m.acts.length - 1);
    }
  }
}

/** Whether an `if` may ask for what came of the verb. */
export function givesResult(verb: string): boolean {
  const { on = {} } = VERB_BY_WORD.get(verb) ?? {};
  return Object.values(on).some(({ makes }) => makes.includes('outcome'));
}
