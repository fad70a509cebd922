// Kinds of thing in the words of messages.
import type { ThingKind } from '../vocabulary/kinds.js';

const ONE: Readonly<Record<ThingKind, string>> = {
  part: 'a part',
  fastener: 'a set of fasteners',
  connection: 'a connection',
  circuit: 'a circuit',
  fluid: 'a fluid',
  adjustment: 'an adjustment',
  condition: 'a condition',
  limit: 'a limit',
  supply: 'a supply',
  temporary: 'a temporary thing',
  place: 'a place',
  tool: 'a tool',
  vehicle: 'a vehicle of the fleet',
  source: 'a source',
  message: 'a shared message',
  rule: 'a house rule',
  operation: 'an operation',
  machine: 'part of the vehicle itself',
};

const MANY: Readonly<Record<ThingKind, string>> = {
  part: 'parts',
  fastener: 'fasteners',
  connection: 'connections',
  circuit: 'circuits',
  fluid: 'fluids',
  adjustment: 'adjustments',
  condition: 'conditions',
  limit: 'limits',
  supply: 'supplies',
  temporary: 'temporary things',
  place: 'places',
  tool: 'tools',
  vehicle: 'vehicles',
  source: 'sources',
  message: 'shared messages',
  rule: 'house rules',
  operation: 'operations',
  machine: 'the vehicle itself',
};

/** `a part`. */
export function oneOf(kind: ThingKind): string {
  return ONE[kind];
}

/** `parts, fasteners and places`. */
export function manyOf(kinds: readonly ThingKind[]): string {
  const words = kinds.map((kind) => MANY[kind]);
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
