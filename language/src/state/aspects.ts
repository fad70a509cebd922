// What is remembered of each kind of thing, and how it is before the job starts.
import type { Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import { allTorqued } from './counts.js';
import { constant, type Guarded } from './guarded.js';

/**
 * - `place` of parts: in, hung, out. `position` of parts that can be moved.
 * - `joint` of sealed parts: made, old, wet. `clean` of places: clean, dirty.
 * - `tight` of fastener sets: encoded counts. `spent` of single-use fasteners: no, yes. `fresh` of renewed things: old, new.
 * - `link` of connections: connected, disconnected, capped.
 * - `level` of fluids: full, unchecked, low, drained. `air` of circuits: bled, air.
 * - `setting` of adjustments: set, disturbed. `value` of conditions.
 * - `put` of temporary things: away, placed. `chock` of places: no, yes.
 * - `tag` of anything: no, yes where it must come off again, kept where it may stay on. `tie`: the same.
 * - `posture` of the vehicle: ground, raised, supported. `suspension`: loaded, free, jacked.
 */
export type Aspect =
  | 'place'
  | 'position'
  | 'joint'
  | 'clean'
  | 'tight'
  | 'spent'
  | 'fresh'
  | 'link'
  | 'level'
  | 'air'
  | 'setting'
  | 'value'
  | 'put'
  | 'chock'
  | 'tag'
  | 'tie'
  | 'posture'
  | 'suspension';

/** How a thing is when the vehicle comes in. */
export function initialValue(
  job: Job,
  thing: Thing,
  aspect: Aspect,
  pinned: ReadonlyMap<string, string>,
): Guarded {
  switch (aspect) {
    case 'place':
      return constant('in');
    case 'position':
    case 'value':
      return constant(pinned.get(thing.name) ?? thing.values[0]?.text ?? '');
    case 'joint':
      return constant('made');
    case 'clean':
      return constant('dirty');
    case 'tight':
      return constant(allTorqued(job.count(thing)));
    case 'spent':
      return constant('no');
    case 'fresh':
      return constant('old');
    case 'link':
      return constant('connected');
    case 'level':
      return constant('full');
    case 'air':
      return constant('bled');
    case 'setting':
      return constant('set');
    case 'put':
      return constant('away');
    case 'chock':
    case 'tag':
    case 'tie':
      return constant('no');
    case 'posture':
      return constant('ground');
    case 'suspension':
      return constant('loaded');
  }
}
