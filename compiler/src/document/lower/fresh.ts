// What goes on new at a line, and on which vehicles.
import {
  type BoundItem,
  type BoundStatement,
  type Condition,
  clausesOf,
  isEachSide,
  NEVER,
  phraseText,
} from '@baywright/language';
import { type Prose, text } from '../inline.js';
import { countOf } from './names.js';
import type { Place, Print } from './print.js';
import { partNumber } from './texts.js';
import type { RowAt } from './uses.js';
import { forSome, variantWords } from './variant-words.js';

export interface Fresh {
  readonly when: Condition;
  /** The vehicles that get a new one, where others at this line do not. */
  readonly only: string | undefined;
}

/** Undefined where what is there goes back on. */
export function freshAt(
  print: Print,
  { verb }: BoundStatement,
  { thing }: BoundItem,
  place: Place,
): Fresh | undefined {
  if (!thing) return undefined;
  const makes = verb.on[thing.kind]?.makes ?? [];
  const isFitted = makes.includes('fitted') || makes.includes('started');
  if (verb.word !== 'renew' && !isFitted) return undefined;
  const { diagrams } = print.job.universe;
  const when =
    verb.word === 'renew'
      ? place.when
      : clausesOf(thing, 'renew').reduce<Condition>(
          (all, { guard }) => diagrams.or(all, diagrams.and(place.when, print.job.where(guard))),
          NEVER,
        );
  return when === NEVER ? undefined : { when, only: variantWords(print, when, place.when) };
}

/** Puts it on the list of parts; gives what the line says of it. */
export function noteFresh(
  print: Print,
  { thing, count }: BoundItem,
  { when, only }: Fresh,
  place: Place,
  at: RowAt,
): Prose[] {
  if (!thing) return [];
  const sides = place.side || !isEachSide(thing) ? [place.side] : print.sides;
  for (const side of sides) {
    print.uses.fresh.push({
      ...at,
      thing,
      side: isEachSide(thing) ? side?.word : undefined,
      count: count ?? countOf(thing),
      maybe: place.maybe,
      ...forSome(print, { when, side: place.side }),
    });
  }
  const number = partNumber(print, thing, when);
  return [
    ...(only === undefined ? [] : [[text(phraseText('new-only-with', print.language, { variant: only }))]]),
    ...(number === undefined ? [] : [[text(`${phraseText('part-number', print.language)} ${number}`)]]),
  ];
}
