// The words in which a rule asks for a state: `vehicle raised`, `battery-negative connected`, `any temporary placed`.
import type { Thing } from '../names/model.js';
import type { Aspect } from '../state/aspects.js';
import { decode, size } from '../state/counts.js';
import type { Want } from '../state/wants.js';
import type { ThingKind } from '../vocabulary/kinds.js';

export interface StateTest {
  readonly aspect: Aspect;
  test(value: string): boolean;
  /** What to assume after the rule was broken: the state it forbids no longer holds. */
  readonly otherwise: Want;
}

const word = (aspect: Aspect, values: readonly string[], otherwise: Want): StateTest => ({ aspect, test: (v) => values.includes(v), otherwise });
const counts = (test: (c: ReturnType<typeof decode>) => boolean, otherwise: Want): StateTest => ({ aspect: 'tight', test: (v) => test(decode(v)), otherwise });

const TABLE: Readonly<Partial<Record<ThingKind, Readonly<Record<string, StateTest>>>>> = {
  part: { on: word('place', ['in'], 'off'), off: word('place', ['out', 'hung'], 'in'), out: word('place', ['out'], 'in'), hung: word('place', ['hung'], 'in'), new: word('fresh', ['new'], 'in') },
  fastener: {
    on: counts((c) => c.out < size(c), 'off'), off: counts((c) => c.out === size(c), 'in'), out: counts((c) => c.out > 0, 'in'),
    loose: counts((c) => c.loose + c.started > 0, 'torqued'), torqued: counts((c) => c.torqued === size(c), 'slack'),
  },
  connection: { connected: word('link', ['connected'], 'disconnected'), disconnected: word('link', ['disconnected', 'capped'], 'connected'), open: word('link', ['disconnected'], 'capped'), capped: word('link', ['capped'], 'connected') },
  fluid: { full: word('level', ['full', 'unchecked'], 'drained'), drained: word('level', ['drained'], 'fluid'), low: word('level', ['low', 'drained'], 'fluid') },
  circuit: { bled: word('air', ['bled'], 'bled'), open: word('air', ['air'], 'bled') },
  temporary: { placed: word('put', ['placed'], 'gone'), away: word('put', ['away'], 'placed') },
  place: { chocked: word('chock', ['yes'], 'unchocked'), clean: word('clean', ['clean'], 'clean') },
  machine: { raised: word('posture', ['raised'], 'supported'), supported: word('posture', ['supported'], 'back on ground'), up: word('posture', ['raised', 'supported'], 'back on ground'), loaded: word('suspension', ['loaded', 'jacked'], 'suspension free') },
  adjustment: { disturbed: word('setting', ['disturbed'], 'adjusted'), set: word('setting', ['set'], 'adjusted') },
};

/** Undefined when a thing of this kind has no such state. */
export function stateTest(thing: Thing, state: string): StateTest | undefined {
  if (thing.kind === 'condition') return thing.values.some((v) => v.text === state) ? word('value', [state], 'set') : undefined;
  if (thing.kind === 'part' && thing.values.some((v) => v.text === state)) return word('position', [state], 'position');
  return TABLE[thing.kind]?.[state];
}

/** State words that rules may use for a kind, for completion and the reference. */
export function stateWords(kind: ThingKind): readonly string[] {
  return Object.keys(TABLE[kind] ?? {});
}
