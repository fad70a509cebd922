// The sentence of a line: the verb's own phrase in the language of the print, its slots filled from the line.
import {
  allThings,
  type BoundItem,
  type BoundStatement,
  type Clause,
  isEachSide,
  type Language,
  listPieces,
  type Measure,
  type MeasureNode,
  type Name,
  type Piece,
  phrase,
  phraseText,
  renderPhrase,
  type Thing,
  textOf,
  VERB_BY_WORD,
  type VerbDef,
  type Words,
} from '@baywright/language';
import type { Inline, Prose } from '../inline.js';
import { plain, text } from '../inline.js';
import { quantityInline } from './measures.js';
import { itemPieces, type Naming, smallFirst, thingPieces } from './names.js';
import type { Poured } from './poured.js';
import type { Print, SidePrint } from './print.js';
import { foreignTo } from './texts.js';
import type { RowAt } from './uses.js';
import { valueText } from './variant-words.js';

export interface SentenceOptions {
  readonly side: SidePrint | undefined;
  /** Said once for all printed sides. */
  readonly isBothSides?: boolean;
  /** Nothing above the line says which side it is for. */
  readonly tellsSide?: boolean;
  /** Things named here of which a new one goes on, or is made ready to go on. */
  readonly fresh?: ReadonlySet<Thing>;
  /** The row that a wait counts from. */
  readonly since?: RowAt | undefined;
  /** Words of clauses that a box beside the row says, so that the sentence need not. */
  readonly without?: ReadonlySet<string>;
  /** How much goes in, where the line does not say it itself. */
  readonly poured?: Poured | undefined;
}

/** The sentence for some of the objects of a line, with its full stop. */
export function sentence(
  print: Print,
  statement: BoundStatement,
  objects: readonly BoundItem[],
  options: SentenceOptions,
): Prose {
  const { language } = print;
  const figures = new Map<string, Inline>();
  const slots: Record<string, Piece[]> = {};
  const naming: Naming = {
    side: options.side,
    ...(options.isBothSides ? { isBothSides: true } : {}),
  };
  // What each side has says its side by itself; a face or a figure only where no other word of the line does.
  const tellsSide =
    options.tellsSide === true && !objects.some(({ thing }) => thing !== undefined && isEachSide(thing));
  // What is scrapped is never what has just gone on.
  const ageOf = ({ thing }: BoundItem): Naming['age'] =>
    statement.verb.isOfOld && thing?.kind !== 'supply'
      ? 'old'
      : thing && options.fresh?.has(thing)
        ? 'new'
        : undefined;
  const isWorn = statement.verb.word === 'wear';
  if (objects.length > 0) {
    slots.object = listPieces(
      objects.map((object) =>
        isWorn && object.thing
          ? [{ thing: object.thing.id, text: plainName(print, object.thing), strong: true }]
          : itemPieces(print, object, { ...naming, age: ageOf(object), strong: true, tellsSide }),
      ),
      language,
    );
    const valued = objects.find(({ value }) => value !== undefined);
    if (valued?.value !== undefined) {
      const value = valueText(print, valued.thing, valued.value);
      slots.value = [{ thing: 'value', text: value, strong: true }];
    }
  }
  for (const clause of statement.clauses) {
    if (options.without?.has(clause.word)) continue;
    const slot = clause.word === 'bare' ? 'amount' : clause.word;
    const pieces =
      clause.word === 'since' && options.since
        ? rowPieces(options.since, figures)
        : clausePieces(print, statement, clause, figures, ageOf);
    if (pieces.length > 0)
      slots[slot] = [...(slots[slot] ?? []), ...(slots[slot] ? [{ text: ', ' }] : []), ...pieces];
  }
  if (options.poured) {
    const { measure, mark } = options.poured;
    slots.amount = measurePieces(print, 'bare', measure, figures);
    const pieces = namePieces(print, mark);
    if (pieces.length > 0) slots['until level at'] = pieces;
  }
  const words = wordsFor(statement, objects);
  return stopped(closed(inlines(print, renderPhrase(words[language], slots), figures)));
}

/** The verb's own phrase, or the one for what it acts on here, or for the value that it brings it to. */
function wordsFor({ verb }: BoundStatement, objects: readonly BoundItem[]): Words {
  const kind = objects[0]?.thing?.kind;
  const values = new Set(objects.map(({ value }) => value));
  const [value] = values;
  // A table, not an object: a shop's value may have any name.
  const own = values.size === 1 && value !== undefined ? ownPhrase(verb, value) : undefined;
  return own ?? ((kind && kind !== 'machine' && verb.phraseFor?.[kind]) || verb.phrase);
}

const ownPhrase = ({ phraseForValue = {} }: VerbDef, value: string): Words | undefined =>
  Object.hasOwn(phraseForValue, value) ? phraseForValue[value] : undefined;

/** What a comma adds to a title ends with another where the sentence goes on: `the tyre pressure, cold, with the gauge`. */
function closed(prose: Prose): Prose {
  return prose.map((inline, i): Inline => {
    const before = prose[i - 1];
    if (inline.kind !== 'text' || before?.kind !== 'thing' || !before.text.includes(', ')) return inline;
    return text(inline.text.replace(/^((?:\u00a0\([^)]*\))?)(?= \p{L})/u, '$1,'));
  });
}

const plainName = (print: Print, thing: NonNullable<BoundItem['thing']>): string =>
  textOf(thingPieces(print, thing, undefined, { isListed: true }));

/** The number of a row, as a link to it. */
function rowPieces({ row, number }: RowAt, figures: Map<string, Inline>): Piece[] {
  figures.set(row, { kind: 'line', text: number, row });
  return [{ quantity: row, text: number }];
}

function clausePieces(
  print: Print,
  statement: BoundStatement,
  clause: Clause,
  figures: Map<string, Inline>,
  ageOf: (item: BoundItem) => Naming['age'],
): Piece[] {
  const { language } = print;
  if (clause.items.length > 0) {
    return listPieces(
      statement
        .named(clause.word)
        .filter((item) => clause.items.includes(item.item))
        .map((item) => itemPieces(print, item, { age: ageOf(item) })),
      language,
    );
  }
  if (clause.spec) {
    return listPieces(
      clause.spec.stages.map(({ measure }) => figurePieces(print, clause.word, measure, figures)),
      language,
    );
  }
  if (clause.event) {
    const { verbs, target } = clause.event;
    const verb = VERB_BY_WORD.get(verbs[0]?.text ?? '');
    const names = target?.form === 'names' ? target.names : [];
    if (!verb) return [];
    const said = textOf(renderPhrase(verb.phrase[language], { object: namePieces(print, names) }));
    return [{ text: smallFirst(said) }];
  }
  if (clause.raw)
    return [{ text: clause.word === 'order' ? orderWord(print, clause.raw.text) : clause.raw.text }];
  return clause.words.length > 0 ? [{ text: clause.words.map((word) => word.text).join(', ') }] : [];
}

function namePieces(print: Print, names: readonly Name[]): Piece[] {
  const each = names.map((name): Piece[] => {
    const thing = print.job.scope.resolve(name.text);
    return thing ? thingPieces(print, thing, undefined, {}) : [{ text: name.text }];
  });
  return listPieces(each, print.language);
}

/** `at 4 places`, `by 1/2 turn`: a bare number after `at` counts places. */
function figurePieces(print: Print, word: string, node: MeasureNode, figures: Map<string, Inline>): Piece[] {
  const { measure } = node;
  const count = node.amounts.length === 1 ? node.amounts[0]?.number.value : undefined;
  if (!measure && word === 'at' && count) {
    return [{ text: phraseText('places-count', print.language, { count: String(count.n / count.d) }) }];
  }
  return measure ? measurePieces(print, word, measure, figures) : [{ text: '?' }];
}

function measurePieces(print: Print, word: string, measure: Measure, figures: Map<string, Inline>): Piece[] {
  const key = `${word} ${figures.size}`;
  const inline = quantityInline(measure, print);
  figures.set(key, inline);
  return [{ quantity: key, text: plain([inline]) }];
}

/** A named order in words; positions written out stay as they are. */
export function orderWord(print: Print, order: string): string {
  const name = order.split(',')[0]?.trim() ?? '';
  if (name === 'star') return phrase('order-star', print.language);
  if (name === 'cross') return phrase('order-cross', print.language);
  if (name === 'inside-out') return phrase('order-inside-out', print.language);
  if (name === 'outside-in') return phrase('order-outside-in', print.language);
  return order;
}

/** Pieces of a sentence as running text of a document. */
function inlines(print: Print, pieces: readonly Piece[], figures: ReadonlyMap<string, Inline>): Inline[] {
  return pieces.map((piece): Inline => {
    if ('quantity' in piece) return figures.get(piece.quantity) ?? text(piece.text);
    if (!('thing' in piece)) return text(piece.text);
    const language = thingLanguage(print, piece.thing);
    return { kind: 'thing', text: piece.text, ...(language === undefined ? {} : { language }) };
  });
}

/** Of a thing whose title has no translation. */
function thingLanguage(print: Print, id: string): Language | undefined {
  if (print.untranslated.size === 0) return undefined;
  const thing = allThings(print.job.scopes).find((one) => one.id === id);
  return thing && foreignTo(print, thing.file, thing.title);
}

/** With a full stop, unless it ends with a mark of its own; behind that may stand the mark of a missing translation. */
export function stopped(prose: Prose): Prose {
  return /[.!?:…](?: \[\w+\])?$/.test(plain(prose)) || prose.length === 0 ? prose : [...prose, text('.')];
}
