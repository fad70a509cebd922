// Where the paths of an `if` meet again: what may differ between them, and what may not.
import type { Thing } from '../names/model.js';
import type { IfLine } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Axis } from '../variants/universe.js';
import type { Aspect } from './aspects.js';
import type { Guarded, Value } from './guarded.js';
import type { Machine } from './machine.js';

export interface PathDifference {
  readonly line: IfLine;
  readonly file: string;
  readonly axis: Axis;
  readonly things: readonly Thing[];
  readonly when: Condition;
}

/** Newness and cleanness, and settings and levels that the plan's own path left right, may differ: see the table of tricky cases. */
const MAY_DIFFER: ReadonlySet<Aspect> = new Set(['fresh', 'spent', 'clean', 'setting', 'suspension']);

/** Reports what the paths leave differently and goes on with the planned path, the axis' first value that is still alive. */
export function joinPaths(
  m: Machine,
  axis: Axis,
  lines: readonly IfLine[],
  file: string,
): PathDifference | undefined {
  const { d } = m;
  const variable = axis.variable.index;
  const alive = axis.values.map((_, i) => d.fix(m.alive, variable, i));
  const plan = alive.findIndex((c) => c !== NEVER);
  const line = lines[0];
  if (plan < 0 || !line) return undefined;
  const things: Thing[] = [];
  let where: Condition = NEVER;
  for (const [{ thing, aspect }, guarded] of m.cells()) {
    if (!guarded.some((c) => d.mentions(c.when, variable))) continue;
    let differs: Condition = NEVER;
    alive.forEach((here, i) => {
      if (i === plan || here === NEVER) return;
      const both = d.and(here, alive[plan] ?? NEVER);
      differs = d.or(
        differs,
        d.minus(differenceOf(m, guarded, aspect, variable, plan, i, both), m.muted(thing)),
      );
    });
    if (differs === NEVER && !settled(aspect)) continue;
    for (const choice of guarded) {
      const planned = d.fix(choice.when, variable, plan);
      m.change(
        thing,
        aspect,
        d.and(planned, d.or(differs, settled(aspect) ? planned : NEVER)),
        () => choice.value,
        choice.by,
      );
    }
    if (
      differs === NEVER ||
      MAY_DIFFER.has(aspect) ||
      d.implies(differs, d.forget(m.assumedWhere(thing), variable))
    )
      continue;
    things.push(thing);
    where = d.or(where, differs);
  }
  return things.length > 0 ? { line, file, axis, things, when: where } : undefined;
}

function settled(aspect: Aspect): boolean {
  return aspect === 'setting' || aspect === 'level';
}

/** Where the two paths leave different values, levels `full` and `unchecked` counting as one. */
function differenceOf(
  m: Machine,
  guarded: Guarded,
  aspect: Aspect,
  variable: number,
  plan: number,
  other: number,
  both: Condition,
): Condition {
  const { d } = m;
  const same = (v: Value): Value => (aspect === 'level' && v === 'unchecked' ? 'full' : v);
  let differs: Condition = NEVER;
  for (const value of new Set(guarded.map((c) => same(c.value)))) {
    const at = (i: number): Condition =>
      guarded
        .filter((c) => same(c.value) === value)
        .reduce((c, g) => d.or(c, d.fix(g.when, variable, i)), NEVER);
    differs = d.or(differs, d.and(both, d.minus(d.or(at(plan), at(other)), d.and(at(plan), at(other)))));
  }
  return differs;
}
