// How far a second half has come that is still being written.

import type { Thing } from '../names/model.js';
import type { StateRun } from './run.js';
import { directionOfMake } from './wants.js';

/** So few things may well be forgotten. */
const FEW = 3;

/**
 * Whether more of what was taken apart is still apart than is together again: nobody forgets that, it is not written yet.
 * `open`: the things that a finding says are never put right.
 */
export function isPuttingBack(run: StateRun, open: ReadonlySet<Thing>): boolean {
  if (open.size <= FEW) return false;
  const apart = new Set<Thing>();
  for (const { statement } of run.machine.acts)
    for (const { thing } of statement?.objects ?? [])
      if (thing && statement?.verb.on[thing.kind]?.makes.some((make) => directionOfMake(make) === 'apart'))
        apart.add(thing);
  return [...apart].filter((thing) => open.has(thing)).length * 2 > apart.size;
}
