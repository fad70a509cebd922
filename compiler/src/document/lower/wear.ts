// What must be worn from a line on, as pictograms where its meaning is known and as a row where it is not.
import type { BoundStatement, Thing } from '@baywright/language';
import type { Protection } from '../blocks.js';
import { located } from './asides.js';
import { capitalFirst } from './names.js';
import type { Place } from './print.js';
import { sentence } from './sentences.js';
import { titleOf } from './texts.js';
import type { RowAt } from './uses.js';
import { nextRow, type Out, railNow, type Walk } from './walk.js';

/** Words in names and titles that tell which part of the body a thing protects. English names; common practice. */
const MEANINGS: readonly (readonly [RegExp, Protection])[] = [
  [/glove|gauntlet/i, 'gloves'],
  [/goggle|eye|glasses/i, 'eyes'],
  [/\bear|hearing|muffs/i, 'ears'],
  [/face|visor|shield/i, 'face'],
  [/shoe|boot|\bfoot/i, 'feet'],
  [/mask|respirator|lung|breath/i, 'lungs'],
  [/overall|apron|suit|cloth|sleeve/i, 'clothing'],
  [/helmet|hard.?hat|head/i, 'head'],
];

function protectionOf(thing: Thing): Protection | undefined {
  return MEANINGS.find(([words]) => words.test(thing.name) || words.test(thing.title))?.[1];
}

export function lowerWear(walk: Walk, statement: BoundStatement, place: Place, out: Out): RowAt | undefined {
  const { print } = walk;
  const things = statement.objects.flatMap(({ thing }) => (thing ? [thing] : []));
  for (const thing of things) print.uses.worn.set(thing, protectionOf(thing));
  const signs = things.flatMap((thing) => {
    const sign = protectionOf(thing);
    return sign ? [{ sign, label: capitalFirst(titleOf(print, thing)) }] : [];
  });
  if (signs.length === statement.objects.length) {
    out.push({ kind: 'wear', signs, rail: railNow(walk), ...located(print, place, statement.line) });
    return undefined;
  }
  const at = nextRow(walk);
  out.push({
    kind: 'row',
    id: at.row,
    number: at.number,
    body: sentence(print, statement, statement.objects, { side: place.side }),
    notes: [],
    reasons: [],
    beside: [],
    marks: [],
    rail: railNow(walk),
    changes: [],
    ...located(print, place, statement.line),
  });
  return at;
}
