// Things by their titles inside a sentence: small first letter, article in English, how many, which side, new.
import {
  type BoundItem,
  clausesOf,
  isEachSide,
  listPieces,
  numberOf,
  type Piece,
  phrase,
  phrasePieces,
  type Thing,
  textOf,
  tighteningCount,
} from '@baywright/language';
import type { OnSide } from '../blocks.js';
import type { Place, Print, SidePrint } from './print.js';
import { titleOf } from './texts.js';
import { sideWord } from './variant-words.js';

export interface Naming {
  readonly strong?: boolean;
  /** What is said of it: a new one goes on, or the old one is meant. */
  readonly age?: 'new' | 'old' | undefined;
  readonly side?: SidePrint | undefined;
  /** The side is said of whatever it is, not only of what each side has. */
  readonly tellsSide?: boolean;
  /** In a list: without article, and without what a comma adds. */
  readonly isListed?: boolean;
  /** Named for all printed sides at once. */
  readonly isBothSides?: boolean;
}

/** Kinds that are named without an article: stuff, and figures. */
const BARE_KINDS = new Set(['fluid', 'supply']);

/** One thing named as object or in a clause, with its count and alternatives. */
export function itemPieces(print: Print, item: BoundItem, naming: Naming = {}): Piece[] {
  const { thing } = item;
  if (!thing) return [{ text: item.item.name.text }];
  const others = item.item.alternatives.map((name) => {
    const other = print.job.scope.resolve(name.text);
    return other ? thingPieces(print, other, undefined, naming) : [{ text: name.text }];
  });
  return listPieces(
    [thingPieces(print, thing, item.count, naming), ...others],
    print.language,
    others.length > 0 ? 'or' : 'and',
  );
}

export function thingPieces(print: Print, thing: Thing, count: number | undefined, naming: Naming): Piece[] {
  const { language } = print;
  const isBoth = naming.isBothSides === true && isEachSide(thing) && print.sides.length > 1;
  const all = countOf(thing) * (isBoth ? print.sides.length : 1);
  const title = inSentence(print, thing, naming.isListed === true);
  const named: Piece = naming.strong ? { thing: thing.id, text: title, strong: true } : { text: title };
  const side = isBoth
    ? bothSides(print)
    : naming.side && (naming.tellsSide === true || isEachSide(thing)) && print.sides.length > 1
      ? sideWord(print, naming.side.word)
      : '';
  const isCounted =
    naming.strong && COUNTED.has(thing.kind) && all > 1 && (count === undefined || count === all);
  const marks = [
    ...(isCounted ? [String(all)] : []),
    ...(naming.age && language !== 'en' && thing.kind !== 'fluid' ? [phrase(naming.age, language)] : []),
    ...(side === '' ? [] : [side]),
  ];
  const tail: Piece[] = marks.length === 0 ? [] : [{ text: `\u00a0(${marks.join(',\u00a0')})` }];
  if (count !== undefined && count !== all) {
    return [
      ...phrasePieces('some-of', language, { count: [{ text: String(count) }], thing: [named] }),
      ...tail,
    ];
  }
  const aged: Piece[] =
    naming.age && language === 'en' ? [{ text: `${phrase(naming.age, 'en')} ` }, named] : [named];
  if (
    language !== 'en' ||
    naming.isListed ||
    BARE_KINDS.has(thing.kind) ||
    /^(?:the|a|an|each|all)\b/i.test(title) ||
    isCountAhead(title)
  ) {
    return [...aged, ...tail];
  }
  return [...phrasePieces('the', language, { thing: aged }), ...tail];
}

/** `4 rubber mounts`, but not `12 V lead`. */
const isCountAhead = (title: string): boolean => /^\d+\b(?! ?(?:V|A|W|mm|in)\b)/.test(title);

/** Kinds that are told by their number. */
const COUNTED = new Set(['fastener', 'part', 'connection']);

/** How many one entry stands for: a set of fasteners, plugs, pistons. */
export function countOf(thing: Thing): number {
  if (thing.kind === 'fastener') return tighteningCount(thing);
  if (!COUNTED.has(thing.kind)) return 1;
  const count = clausesOf(thing, 'count')[0]?.clause.spec?.stages[0]?.measure.amounts[0]?.number.value;
  const number = count === undefined ? 1 : Math.floor(numberOf(count));
  return number >= 1 && number <= MOST_COUNTED ? number : 1;
}

const MOST_COUNTED = 10_000;

/** `left and right` */
const bothSides = (print: Print): string =>
  textOf(
    listPieces(
      print.sides.map(({ word }) => [{ text: sideWord(print, word) }]),
      print.language,
    ),
  );

/** Kinds in whose titles a comma adds what the list of needs asks for and a sentence does not: `Drain pan, large`. */
const COMMA_ADDS = new Set(['tool', 'supply', 'temporary']);

/** `, left` where both sides are printed and one of them is worked on. */
export const sideSuffix = (print: Print, place: Pick<Place, 'side'>): string =>
  place.side && print.sides.length > 1 ? `, ${sideWord(print, place.side.word)}` : '';

/** What a row of the record says, and on which side, where both are printed. */
export const onSide = (print: Print, place: Pick<Place, 'side'>, what: string): { readonly of?: OnSide } =>
  place.side && print.sides.length > 1
    ? { of: { what: capitalFirst(what), side: capitalFirst(sideWord(print, place.side.word)) } }
    : {};

/** `Hub bolts` as `hub bolts`; `O-ring`, `V6 engine` and `MAX mark` keep their letters, and so does German. */
export function inSentence(print: Print, thing: Thing, isListed = false): string {
  const title = titleOf(print, thing);
  const isShort = COMMA_ADDS.has(thing.kind) || (isListed && thing.kind !== 'fastener');
  const short = isShort ? (title.split(',')[0] ?? title) : title;
  return print.language === 'de' ? short : smallFirst(short);
}

export function smallFirst(words: string): string {
  return /^\p{Lu}(?:\p{Ll}|\s)/u.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;
}

export function capitalFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
