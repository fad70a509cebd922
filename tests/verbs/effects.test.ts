// What the verbs that move states need and make, against the agreed table; order of needs is order of checking.
import { expect, it } from 'vitest';
import { VERB_BY_WORD } from '../../language/src/verbs/index.js';
import type { ThingKind } from '../../language/src/vocabulary/kinds.js';

const rows: [string, ThingKind, string][] = [
  ['loosen', 'fastener', 'reachable, tight enough > loose'],
  ['remove', 'fastener', 'reachable, some on > out'],
  ['remove', 'part', 'mounted, free, reachable, nothing connected, nothing spills > taken off'],
  ['remove', 'temporary', 'placed, reachable > removed'],
  ['place', 'temporary', 'away, reachable > placed'],
  ['hang', 'part', 'hangable, free, reachable > hung'],
  ['separate', 'connection', 'connected, free, reachable > disconnected'],
  ['disconnect', 'connection', 'connected, free, reachable > disconnected'],
  ['cap', 'connection', 'disconnected > capped'],
  ['uncap', 'connection', 'capped > uncapped'],
  ['drain', 'fluid', 'drain open > drained'],
  ['measure', 'limit', 'reachable > outcome'],
  ['inspect', 'part', 'reachable > outcome'],
  ['clean', 'place', 'reachable > cleaned'],
  ['apply', 'supply', 'faces clean > coated'],
  ['renew', 'part', 'out to renew > renewed'],
  ['renew', 'fastener', 'out to renew > renewed'],
  ['renew', 'fluid', 'out to renew > renewed'],
  ['install', 'fastener', 'some out, held thing in > started'],
  [
    'install',
    'part',
    'off, cover order, held thing in, nothing left behind it, members in, joint wet > fitted',
  ],
  [
    'connect',
    'connection',
    'not connected, parts joined in, cover order, nothing left behind it > connected',
  ],
  ['snug', 'fastener', 'none out, held thing in, reachable > snug'],
  [
    'torque',
    'fastener',
    'none out, held thing in, reachable, posture, torque clock, snug first, earlier stages, not spent, has torque > torqued',
  ],
  [
    'tighten',
    'fastener',
    'hand tight, none out, held thing in, reachable, posture, torque clock, not spent > tight',
  ],
  ['fill', 'fluid', 'fill open, closed, fill clock > filled'],
  ['top-up', 'fluid', 'fill open, closed, fill clock > topped'],
  ['check-level', 'fluid', 'holds fluid, fill open, settled > levelled, outcome'],
  ['bleed', 'circuit', 'circuit closed, holds fluid > bled'],
  ['set', 'condition', 'value declared > set'],
  ['adjust', 'adjustment', 'reachable > adjusted'],
  ['chock', 'place', 'not chocked > chocked'],
  ['unchock', 'place', 'chocked > unchocked'],
  ['raise', 'machine', 'on ground > raised'],
  ['support', 'machine', 'raised > supported'],
  ['lower', 'machine', 'up, suspension free, wheels on > lowered'],
  ['load', 'machine', 'up > loaded'],
  ['unload', 'machine', 'suspension loaded > unloaded'],
  ['run', 'machine', 'closed to run, run clock > fluids moved'],
  ['road-test', 'machine', 'whole, run clock, on ground, unchocked, nothing placed > fluids moved, outcome'],
];

it.each(rows)('%s a %s: %s', (word, kind, effect) => {
  const found = VERB_BY_WORD.get(word)?.on[kind];
  expect(`${found?.needs.join(', ')} > ${found?.makes.join(', ')}`).toBe(effect);
});

it.each(['pump', 'push-back', 'lubricate', 'turn'])('%s changes no state', (word) => {
  const made = Object.values(VERB_BY_WORD.get(word)?.on ?? {}).flatMap((effect) => effect.makes);
  expect(made).toEqual([]);
});
