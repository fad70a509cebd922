// What goes on new at a line, and on which vehicles.
import {
  type BoundItem,
  type BoundStatement,
  type Condition,
  clausesOf,
  isEachSide,
  NEVER,
  phraseText,
  type Thing,
  type VerbDef,
} from '@baywright/language';
import { type Prose, text } from '../inline.js';
import { countOf } from './names.js';
import type { Place, Print } from './print.js';
import { partNumber } from './texts.js';
import type { Trace } from './trace.js';
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
  const isFitted = makes.includes('fitted') || makes.includes('started') || makes.includes('connected');
  const isRenewed = renews(verb, thing);
  if (!isRenewed && !isFitted) return undefined;
  const when = isRenewed ? place.when : renewedWhere(print, thing, place);
  return when === NEVER ? undefined : { when, only: variantWords(print, when, place.when) };
}

/** Whether the line itself asks for a new one. */
export const renews = ({ on }: VerbDef, { kind }: Thing): boolean =>
  on[kind]?.makes.includes('renewed') ?? false;

/** The vehicles of a place on which a thing is renewed by its entry. */
function renewedWhere(print: Print, thing: Thing, place: Place): Condition {
  const { diagrams } = print.job.universe;
  return clausesOf(thing, 'renew').reduce<Condition>(
    (all, { guard }) => diagrams.or(all, diagrams.and(place.when, print.job.where(guard))),
    NEVER,
  );
}

/** Things named at a line of which the new one is meant before it goes on: `Lubricate the new seal`. */
export function readiedAt(
  print: Print,
  statement: BoundStatement,
  objects: readonly BoundItem[],
  place: Place,
  trace: Trace,
): Thing[] {
  if (!statement.verb.readies) return [];
  return [...objects, ...statement.named('to')].flatMap(({ thing }) =>
    thing && trace.open.get(thing) === 'off' && renewedWhere(print, thing, place) === place.when
      ? [thing]
      : [],
  );
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
