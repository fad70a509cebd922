// Something an act needed and did not find. It is noted when it fails, the needed state is assumed, and only at the
// end is it told as a finding: what is done later after all was out of order, what is never done is missing.
import type { Thing } from '../names/model.js';
import { type Condition, type Diagrams, NEVER } from '../variants/diagrams.js';
import type { Need } from '../vocabulary/needs.js';
import type { Act } from './act.js';
import type { Want } from './wants.js';

/** One thing that is not as wanted. */
export interface Lack {
  readonly thing: Thing;
  readonly want: Want;
  /** Where it is not as wanted. */
  readonly when: Condition;
  /** The value wanted, for conditions and positions; the minutes left, for clocks. */
  readonly value?: string;
  /** The act that left it so, -1 when the vehicle came in so. */
  readonly maker: number;
}

export interface Deficit {
  /** The act that failed; undefined at the end of the procedure. */
  readonly act: Act | undefined;
  readonly need: Need | 'end';
  /** The things the act asked it of. */
  readonly about: Thing[];
  readonly lacks: Lack[];
  /** Noted only so that what follows from it is not told again. */
  readonly silent: boolean;
  /** The rest of the joint, put right along with the things that lack. */
  readonly also: Map<Thing, Want>;
  /** Acts that later did what was missing. */
  readonly late: Act[];
  /** Things that were done late, and where. */
  readonly arrived: Map<Thing, Condition>;
}

/** What one line left on some combinations was noted before on others: one finding takes both in. */
export function joinsEarlier(d: Diagrams, deficits: readonly Deficit[], lack: Lack): boolean {
  const same = (l: Lack): boolean => l.thing === lack.thing && l.want === lack.want && l.maker === lack.maker;
  const earlier = deficits.find(
    ({ silent, lacks, arrived }) =>
      !silent && lacks.some((l) => same(l) && !d.implies(l.when, arrived.get(l.thing) ?? NEVER)),
  );
  earlier?.lacks.push(lack);
  return earlier !== undefined;
}
