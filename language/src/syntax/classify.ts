// Tells from the first words of a line what the line is where it stands.
import type { IToken } from 'chevrotain';
import { VERB_BY_WORD } from '../verbs/index.js';
import { SAID_FOR } from '../verbs/said-for.js';
import { CONTEXT_WORDS, HEADS, HEADS_IN, type HeadDef, type LineContext } from '../vocabulary/heads.js';
import { HEADS_SAID } from '../vocabulary/heads-said.js';
import type { ThingKind } from '../vocabulary/kinds.js';
import { nearestWord } from '../vocabulary/near.js';
import { SECTION_BY_WORD, SECTIONS, type SectionDef } from '../vocabulary/sections.js';
import { SIGNALS } from '../vocabulary/signals.js';
import { isValueWord, KEYWORDS, phraseAt, phrasesOf } from './keywords.js';
import { oneEditAway } from './slips.js';
import { STATES } from './states.js';
import { Comma, endOf, Hole, NumberToken, Word } from './tokens.js';

/** Where the lines of a block stand, and what kind of thing the entry or section above declares. */
export interface BlockPlace {
  readonly context: LineContext;
  readonly kind: ThingKind | undefined;
  /** The verb of the statement above, whose clauses these lines hold. */
  readonly verb?: string;
  /** The line above was read with a slip mended: what does not fit below it may be its echo, and is left unread. */
  readonly doubtful?: true;
}

/** A block that takes no lines, or one whose lines are kept and not read. */
export type Place = BlockPlace | 'nothing' | 'unread';

/** What a line is, by its first word. */
export type Classified =
  | { readonly is: 'head'; readonly head: HeadDef; readonly length: number }
  | { readonly is: 'section'; readonly section: SectionDef }
  | { readonly is: 'verb' | 'entry' | 'clauses' | 'values' | 'prerequisite' | 'rule' }
  | { readonly is: 'unknown'; readonly problem: UnknownHead };

/** Why a first word cannot be read. */
export type UnknownHead =
  | { readonly form: 'misplaced'; readonly word: string; readonly length: number; readonly goes: string }
  | { readonly form: 'reserved'; readonly word: string; readonly length: number }
  | { readonly form: 'unknown'; readonly word: string; readonly near: () => readonly string[] };

/** A first word with a slip in it, and the word it is read as. */
export interface Slip {
  readonly length: number;
  readonly word: string;
}

/** Tells what a line is. `hasTitle`: the first word is all its code, and text follows behind the colon. */
export function classify(tokens: readonly IToken[], place: BlockPlace, hasTitle: boolean): Classified {
  const { context, kind } = place;
  const [first] = tokens;
  if (first === undefined) return unknown('');
  if (first.tokenType === Word) {
    const head = headAt(tokens, context);
    if (head !== undefined) return head;
    if (context === 'file') {
      const section = SECTION_BY_WORD.get(first.image);
      if (section !== undefined) return { is: 'section', section };
    }
    if (isWork(context) && VERB_BY_WORD.has(first.image)) return { is: 'verb' };
  }
  if (context === 'entry' || context === 'statement') {
    if (kind === 'message' && SIGNALS.some((signal) => signal === first.image)) {
      const signal = HEADS.find((each) => each.word === first.image);
      if (signal !== undefined) return { is: 'head', head: signal, length: 1 };
    }
    if (kind === 'rule') return ruleAt(tokens) ? { is: 'rule' } : notFound(tokens, place);
    const keywords = context === 'entry' ? KEYWORDS.entry : KEYWORDS.step;
    if (kind === 'condition' && isValueWord(tokens, 0)) return { is: 'values' };
    if (opensQuantity(first) || phraseAt(tokens, 0, keywords) !== undefined) return { is: 'clauses' };
    if (kind === 'condition' && first.tokenType === Word && !isKnownElsewhere(first.image))
      return { is: 'values' };
    return notFound(tokens, place);
  }
  if (first.tokenType !== Word) return unknown(first.image);
  if (isWork(context) && SAID_FOR.has(first.image)) return unknown(first.image);
  if (context === 'declarations') {
    const phrase = phraseAt(tokens, 0, KEYWORDS.entry) ?? phraseAt(tokens, 0, KEYWORDS.step);
    if (phrase !== undefined) {
      const { text: word, words } = phrase;
      const problem: UnknownHead = hasTitle
        ? { form: 'reserved', word, length: words.length }
        : { form: 'misplaced', word, length: words.length, goes: CONTEXT_WORDS.entry };
      return { is: 'unknown', problem };
    }
    if (!hasTitle && SECTION_BY_WORD.has(first.image)) return misplaced(first.image, 1, CONTEXT_WORDS.file);
    return { is: 'entry' };
  }
  if (context === 'prerequisites') {
    return phraseAt(tokens, 0, KEYWORDS.entry) === undefined
      ? { is: 'prerequisite' }
      : notFound(tokens, place);
  }
  return notFound(tokens, place);
}

/** The word that was meant and fits where the line stands: the verb for what shops say, or the one word an edit away. */
export function slipAt(tokens: readonly IToken[], place: BlockPlace): Slip | undefined {
  const joined = isWork(place.context) ? joinedVerb(tokens) : undefined;
  if (joined !== undefined) return { length: 2, word: joined };
  const said = isWork(place.context) ? SAID_FOR.get(tokens[0]?.image.toLowerCase() ?? '') : undefined;
  if (said !== undefined) return { length: 1, word: said };
  const words: string[] = [];
  const candidates = wordsOpening(place);
  const head = HEADS_SAID.get(tokens[0]?.image.toLowerCase() ?? '');
  if (head !== undefined && candidates.includes(head)) return { length: 1, word: head };
  if (SAID_IN_SENTENCES.has(tokens[0]?.image ?? '') || isSentence(tokens)) return undefined;
  const longest = Math.max(1, ...candidates.map((text) => text.split(' ').length));
  for (let length = 1; length <= longest; length++) {
    const token = tokens[length - 1];
    if (token?.tokenType !== Word) return undefined;
    words.push(token.image);
    const meant = oneEditAway(
      words.join(' '),
      candidates.filter((text) => text.split(' ').length === length),
    );
    const next = tokens[length];
    // A word that runs into something else (`st"p`) is no slip of one letter.
    const isWhole = next === undefined || next.tokenType === Comma || next.startOffset > endOf(token);
    if (meant !== undefined && isWhole) return { length, word: meant };
  }
  return undefined;
}

/** Words of speech that are a letter away from one of the language: `let it cool` sets nothing. */
export const SAID_IN_SENTENCES: ReadonlySet<string> = new Set(['end', 'let', 'get']);

/** `check level axle-oil`: the two words of a verb, or of what is said for one, without their hyphen. */
function joinedVerb([first, second, object]: readonly IToken[]): string | undefined {
  if (second?.tokenType !== Word || object === undefined) return undefined;
  const word = `${first?.image}-${second.image}`.toLowerCase();
  return VERB_BY_WORD.has(word) ? word : SAID_FOR.get(word);
}

/** `Plug the sensor in until it clicks.` is text that was meant for the technician, not a verb with a slip. */
function isSentence(tokens: readonly IToken[]): boolean {
  const [first] = tokens;
  return tokens.length > 3 && /^\p{Lu}/u.test(first?.image ?? '') && tokens.at(-1)?.image === '.';
}

/** Every word that may open a line in a place, names aside. */
function wordsOpening({ context, kind }: BlockPlace): string[] {
  const heads = [...(HEADS_IN.get(context)?.keys() ?? [])];
  if (context === 'file') return [...heads, ...SECTIONS.map(({ word }) => word)];
  if (isWork(context)) return [...heads, ...VERB_BY_WORD.keys()];
  if (context === 'statement')
    return [...heads, ...phrasesOf(KEYWORDS.step).filter((word) => !JOINERS.has(word))];
  if (context !== 'entry') return heads;
  if (kind === 'message') return [...heads, ...SIGNALS];
  return [
    ...heads,
    ...(kind === 'rule' ? RULE_OPENERS : phrasesOf(KEYWORDS.entry).filter((word) => !JOINERS.has(word))),
  ];
}

const RULE_OPENERS = [
  'after',
  'before',
  'never',
  'every',
  'require',
  'while',
  'since',
  'needs',
  'at most once',
];
const JOINERS = new Set(['and', 'or', 'then', 'back']);

function isWork(context: LineContext): boolean {
  return context === 'step' || context === 'work' || context === 'operation';
}

function headAt(tokens: readonly IToken[], context: LineContext): Classified | undefined {
  const first = tokens[0]?.image ?? '';
  const second = tokens[1]?.tokenType === Word ? tokens[1].image : undefined;
  const heads = HEADS_IN.get(context);
  const pair = second === undefined ? undefined : heads?.get(`${first} ${second}`);
  if (pair !== undefined) return { is: 'head', head: pair, length: 2 };
  const head = heads?.get(first);
  return head && { is: 'head', head, length: 1 };
}

function ruleAt(tokens: readonly IToken[]): boolean {
  const phrase = phraseAt(tokens, 0, KEYWORDS.rule);
  return phrase !== undefined && RULE_OPENERS.includes(phrase.text);
}

function opensQuantity(token: IToken): boolean {
  return token.tokenType === NumberToken || token.tokenType === Hole;
}

function notFound(tokens: readonly IToken[], place: BlockPlace): Classified {
  const word = tokens[0]?.image ?? '';
  const elsewhere = placeOf(tokens) ?? (place.context === 'file' ? placeOfCapital(tokens) : undefined);
  if (elsewhere !== undefined) return misplaced(elsewhere.word, elsewhere.length, elsewhere.goes);
  const [, state, more] = tokens;
  const isState = isWork(place.context) && more === undefined && STATES.has(state?.image ?? '');
  return unknown(word, () => {
    const sign = place.context === 'entry' ? SIGNS.get(word) : undefined;
    if (sign !== undefined) return [sign];
    if (isState) return [`set ${word}`];
    const opening = wordsOpening(place);
    const begun = opening.filter((text) => text.startsWith(`${word} `));
    return begun.length > 0 ? begun : nearestWord(word, opening);
  });
}

/** Signs for a limit, as a drawing has them. */
const SIGNS: ReadonlyMap<string, string> = new Map([
  ['>', 'at least'],
  ['≥', 'at least'],
  ['<', 'at most'],
  ['≤', 'at most'],
]);

function isKnownElsewhere(word: string): boolean {
  return SECTION_BY_WORD.has(word) || HEADS.some((head) => head.word === word && head.kind !== 'text');
}

/** Where a word that does not fit here goes. */
function placeOf(tokens: readonly IToken[]): { word: string; length: number; goes: string } | undefined {
  const [first, second] = tokens;
  if (first?.tokenType !== Word) return undefined;
  const pair = second?.tokenType === Word ? `${first.image} ${second.image}` : undefined;
  const head = HEADS.find(({ word }) => word === pair) ?? HEADS.find(({ word }) => word === first.image);
  const [context] = head?.contexts ?? [];
  if (head !== undefined && context !== undefined) {
    const goes = head.contexts.includes('step') ? CONTEXT_WORDS.step : CONTEXT_WORDS[context];
    return { word: head.word, length: head.word.split(' ').length, goes };
  }
  if (SECTION_BY_WORD.has(first.image)) return { word: first.image, length: 1, goes: CONTEXT_WORDS.file };
  if (VERB_BY_WORD.has(first.image)) return { word: first.image, length: 1, goes: CONTEXT_WORDS.step };
  const clause = phraseAt(tokens, 0, KEYWORDS.entry);
  if (clause !== undefined && !JOINERS.has(clause.text))
    return { word: clause.text, length: clause.words.length, goes: CONTEXT_WORDS.entry };
  const below = phraseAt(tokens, 0, KEYWORDS.step);
  if (below !== undefined && !JOINERS.has(below.text))
    return { word: below.text, length: below.words.length, goes: 'behind a statement or under it' };
  return undefined;
}

/** `Step 1: …` and `WARNING: …` at the left edge, as on paper. */
function placeOfCapital(tokens: readonly IToken[]): ReturnType<typeof placeOf> {
  const word = tokens[0]?.image.toLowerCase() ?? '';
  const head = isSentence(tokens) ? undefined : HEADS.find((each) => each.word === word);
  const [context] = head?.contexts ?? [];
  if (head === undefined || context === undefined || context === 'file') return undefined;
  return { word, length: 1, goes: CONTEXT_WORDS[head.contexts.includes('step') ? 'step' : context] };
}

function misplaced(word: string, length: number, goes: string): Classified {
  return { is: 'unknown', problem: { form: 'misplaced', word, length, goes } };
}

/** The words it may have been meant for are looked up only when asked for: layout asks of a line whether it fits, no more. */
function unknown(word: string, near: () => readonly string[] = () => []): Classified {
  return { is: 'unknown', problem: { form: 'unknown', word, near } };
}
