// The words in which a rule asks for a state: `vehicle raised`, `battery-negative connected`, `any temporary placed`.
import type { Thing } from '../names/model.js';
import type { Aspect } from '../state/aspects.js';
import { decode, size } from '../state/counts.js';
import type { Want } from '../state/wants.js';
import type { ThingKind } from '../vocabulary/kinds.js';

export interface StateTest {
  readonly aspect: Aspect;
  test(value: string): boolean;
  /** What to assume after a ban on this state was broken: it no longer holds. */
  readonly otherwise: Want;
  /** What to assume after a ban on its opposite was broken: it holds. */
  readonly holds: Want;
}

const word = (aspect: Aspect, values: readonly string[], otherwise: Want, holds: Want): StateTest => ({
  aspect,
  test: (v) => values.includes(v),
  otherwise,
  holds,
});
const counts = (
  test: (c: ReturnType<typeof decode>) => boolean,
  otherwise: Want,
  holds: Want,
): StateTest => ({ aspect: 'tight', test: (v) => test(decode(v)), otherwise, holds });

const TABLE: Readonly<Partial<Record<ThingKind, Readonly<Record<string, StateTest>>>>> = {
  part: {
    on: word('place', ['in'], 'off', 'in'),
    off: word('place', ['out', 'hung'], 'in', 'off'),
    out: word('place', ['out'], 'in', 'off'),
    hung: word('place', ['hung'], 'in', 'hung'),
    new: word('fresh', ['new'], 'in', 'in'),
  },
  fastener: {
    on: counts((c) => c.out < size(c), 'off', 'in'),
    off: counts((c) => c.out === size(c), 'in', 'off'),
    out: counts((c) => c.out > 0, 'in', 'off'),
    loose: counts((c) => c.loose + c.started > 0, 'torqued', 'slack'),
    torqued: counts((c) => c.torqued === size(c), 'slack', 'torqued'),
  },
  connection: {
    connected: word('link', ['connected'], 'disconnected', 'connected'),
    disconnected: word('link', ['disconnected', 'capped'], 'connected', 'disconnected'),
    open: word('link', ['disconnected'], 'capped', 'disconnected'),
    capped: word('link', ['capped'], 'connected', 'capped'),
  },
  fluid: {
    full: word('level', ['full', 'unchecked'], 'drained', 'fluid'),
    drained: word('level', ['drained'], 'fluid', 'drained'),
    low: word('level', ['low', 'drained'], 'fluid', 'drained'),
  },
  circuit: { bled: word('air', ['bled'], 'bled', 'bled'), open: word('air', ['air'], 'bled', 'bled') },
  temporary: {
    placed: word('put', ['placed'], 'gone', 'placed'),
    away: word('put', ['away'], 'placed', 'gone'),
  },
  place: {
    chocked: word('chock', ['yes'], 'unchocked', 'chocked'),
    clean: word('clean', ['clean'], 'clean', 'clean'),
  },
  machine: {
    raised: word('posture', ['raised'], 'supported', 'up'),
    supported: word('posture', ['supported'], 'back on ground', 'supported'),
    up: word('posture', ['raised', 'supported'], 'back on ground', 'up'),
    tagged: word('tag', ['yes'], 'untagged', 'tagged'),
    loaded: word('suspension', ['loaded', 'jacked'], 'suspension free', 'suspension loaded'),
  },
  adjustment: {
    disturbed: word('setting', ['disturbed'], 'adjusted', 'adjusted'),
    set: word('setting', ['set'], 'adjusted', 'adjusted'),
  },
};

/** Undefined when a thing of this kind has no such state. */
export function stateTest(thing: Thing, state: string): StateTest | undefined {
  if (thing.kind === 'condition')
    return thing.values.some((v) => v.text === state) ? word('value', [state], 'set', 'set') : undefined;
  if (thing.kind === 'part' && thing.values.some((v) => v.text === state))
    return word('position', [state], 'position', 'position');
  return TABLE[thing.kind]?.[state];
}

/** State words that rules may use for a kind, for completion and the reference. */
export function stateWords(kind: ThingKind): readonly string[] {
  return Object.keys(TABLE[kind] ?? {});
}
