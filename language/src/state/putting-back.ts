// How far a second half has come that is still being written.

import type { Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import type { StateRun } from './run.js';
import { directionOfMake } from './wants.js';

/** So few things may well be forgotten. */
const FEW = 3;

/**
 * Whether more of what was taken apart is still apart than is together again, or all that came off before what is together
 * again: nobody forgets that, it is not written yet. `open`: the things that a finding says are never put right;
 * `isWithoutEnd`: the completion is not begun.
 */
export function isPuttingBack(run: StateRun, open: ReadonlySet<Thing>, isWithoutEnd: boolean): boolean {
  if (open.size <= FEW) return false;
  const apart = new Map<Thing, number>();
  for (const { statement, index } of run.machine.acts)
    for (const { thing } of statement?.objects ?? [])
      if (thing && !apart.has(thing) && takesApart(statement, thing)) apart.set(thing, index);
  const still = [...apart].filter(([thing]) => open.has(thing));
  const back = [...apart].filter(([thing]) => !open.has(thing)).map(([, index]) => index);
  const isOuter = still.every(([, index]) => index <= Math.min(...back));
  return still.length * 2 > apart.size || (isWithoutEnd && still.length > 0 && isOuter);
}

const takesApart = (statement: BoundStatement | undefined, { kind }: Thing): boolean =>
  statement?.verb.on[kind]?.makes.some((make) => directionOfMake(make) === 'apart') ?? false;
