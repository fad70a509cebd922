// The keyword pass: after lexing, words and phrases of a line become keywords by the context of the line. No keyword
// is a pattern of the lexer, so verbs, section words, units and values may all be names.
import type { IToken, TokenType } from 'chevrotain';
import { type ClauseShape, ENTRY_CLAUSES, STEP_CLAUSES } from '../vocabulary/clauses.js';
import type { UnitPayload } from './patterns.js';
import {
  And,
  AnyWord,
  At,
  AtMostOnce,
  Back,
  Bound,
  By,
  Comma,
  Count,
  EventWord,
  endOf,
  FlagWord,
  From,
  Hole,
  IfTestWord,
  It,
  Marked,
  NamesWord,
  Needs,
  Not,
  NumberToken,
  On,
  Or,
  Over,
  RawWord,
  Require,
  RuleEnd,
  RuleWord,
  Side,
  SpecWord,
  Then,
  To,
  TolerancePair,
  UnitToken,
  When,
  While,
  Word,
  WordsWord,
} from './tokens.js';

/** The phrases of one context by their first word, the longest first. */
export type Keywords = ReadonlyMap<string, readonly Phrase[]>;

interface Phrase {
  readonly words: readonly string[];
  readonly text: string;
  readonly type: TokenType;
}

const SHAPES: Readonly<Record<ClauseShape | 'names or spec' | 'event', TokenType>> = {
  names: NamesWord,
  spec: SpecWord,
  raw: RawWord,
  words: WordsWord,
  option: WordsWord,
  flag: FlagWord,
  reason: FlagWord,
  'names or spec': NamesWord,
  event: EventWord,
};

const GUARDS: readonly [string, TokenType][] = [
  ['when', When],
  ['only when', When],
  ['and', And],
  ['or', Or],
];
const JOINERS: readonly [string, TokenType][] = [...GUARDS, ['then', Then], ['back', Back]];
const BOUNDS: readonly [string, TokenType][] = [
  ['at least', Bound],
  ['at most', Bound],
];

/** Prepositions after the target of a rule's action: `require raise vehicle with hoist`. */
const RULE_PREPOSITIONS = ['with', 'to', 'at', 'from', 'on', 'in', 'into', 'by'] as const;

/** What a line's keywords are, by the form of the line. */
export const KEYWORDS = {
  entry: table([
    ...BOUNDS,
    ...ENTRY_CLAUSES.map(({ word, shape }): [string, TokenType] => [word, SHAPES[shape]]),
    ...JOINERS,
  ]),
  step: table([
    ...BOUNDS,
    ...STEP_CLAUSES.map(({ word, shape }): [string, TokenType] => [word, SHAPES[shape]]),
    ...JOINERS,
  ]),
  rule: table([
    ...['after', 'before', 'never', 'every'].map((word): [string, TokenType] => [word, RuleWord]),
    ...RULE_PREPOSITIONS.map((word): [string, TokenType] => [word, NamesWord]),
    ['require', Require],
    ['since', EventWord],
    ['while', While],
    ['needs', Needs],
    ['at most once', AtMostOnce],
    ['next', RuleEnd],
    ['step ends', RuleEnd],
    ['it', It],
    ['any', AnyWord],
    ['marked', Marked],
    ['over', Over],
    ['not', Not],
    ['or', Or],
    ['and', And],
  ]),
  guard: table([...GUARDS, ['from', From], ...BOUNDS]),
  status: table([
    ['by', By],
    ['on', On],
  ]),
  clip: table([['at', At]]),
  perform: table([...GUARDS, ['from', From], ['side', Side]]),
  if: table([
    ...['below', 'above', 'outside', 'within'].map((side): [string, TokenType] => [
      `${side} limit`,
      IfTestWord,
    ]),
    ['rejected', IfTestWord],
    ['needed', IfTestWord],
  ]),
  plain: table([]),
} satisfies Readonly<Record<string, Keywords>>;

/** Turns the keywords of a context, counts and the range word into tokens of their own. */
export function markKeywords(tokens: readonly IToken[], code: string, keywords: Keywords): IToken[] {
  const marked: IToken[] = [];
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i];
    if (token === undefined) break;
    const next = tokens[i + 1];
    if (
      (token.tokenType === NumberToken || token.tokenType === Hole) &&
      next?.image === 'of' &&
      next.tokenType === Word
    ) {
      marked.push(merge(token, next, code, Count, token.payload));
      i += 2;
      continue;
    }
    if (token.tokenType !== Word) {
      marked.push(token);
      i += 1;
      continue;
    }
    const isClause = keywords.has('to') && areOfTwoKinds(marked[marked.length - 1], tokens[i + 2]);
    if (token.image === 'to' && endsNumber(marked[marked.length - 1]) && startsNumber(next) && !isClause) {
      marked.push({ ...token, tokenType: To, tokenTypeIdx: To.tokenTypeIdx ?? 0 });
      i += 1;
      continue;
    }
    const before = marked[marked.length - 1]?.tokenType;
    // The option of a guard and the first word of a list of words are names whatever they are: `when side left`,
    // `marked refrigerant`.
    const isValue =
      before === When ||
      before === And ||
      before === WordsWord ||
      (before === Word && isValueWord(tokens, i)) ||
      isMark(marked, tokens, i, keywords);
    const phrase = isValue ? undefined : phraseAt(tokens, i, keywords);
    const last = phrase === undefined ? undefined : tokens[i + phrase.words.length - 1];
    marked.push(
      phrase === undefined || last === undefined ? token : merge(token, last, code, phrase.type, phrase.text),
    );
    i += phrase?.words.length ?? 1;
  }
  return marked;
}

/** The longest phrase that stands at a token, if one does. */
export function phraseAt(tokens: readonly IToken[], at: number, keywords: Keywords): Phrase | undefined {
  const phrases = keywords.get(tokens[at]?.image ?? '');
  return phrases?.find(({ words }) => {
    const fits = words.every((word, i) => {
      const token = tokens[at + i];
      return token?.tokenType === Word && token.image === word;
    });
    // `fill at least 3 L` is `fill` with a bound, not `fill at`.
    const next = tokens[at + words.length]?.image;
    const cutsBound =
      words.length > 1 && words[words.length - 1] === 'at' && (next === 'least' || next === 'most');
    return fits && !cutsBound;
  });
}

/** Whether `on` or `in` stands where it can only be a value: `set ignition on`, `off, on`. */
export function isValueWord(tokens: readonly IToken[], at: number): boolean {
  const word = tokens[at]?.image;
  if (word !== 'on' && word !== 'in') return false;
  const next = tokens[at + 1];
  return next === undefined || next.tokenType === Comma || next.image === 'when' || next.image === 'only';
}

/**
 * Whether a clause word after a comma goes on with a list of marks: `marked brake, refrigerant`. It does where the
 * clause would lack what it says; a flag, which says all alone, is the clause.
 */
function isMark(
  marked: readonly IToken[],
  tokens: readonly IToken[],
  at: number,
  keywords: Keywords,
): boolean {
  const next = tokens[at + 1];
  if (marked[marked.length - 1]?.tokenType !== Comma) return false;
  if (next !== undefined && next.tokenType !== Comma && next.image !== 'when') return false;
  let start = marked.length - 1;
  while (marked[start]?.tokenType === Comma && marked[start - 1]?.tokenType === Word) start -= 2;
  const opens = marked[start];
  if (opens?.tokenType !== WordsWord || opens.payload !== 'marked') return false;
  return phraseAt(tokens, at, keywords)?.type !== FlagWord;
}

/** All phrases of a table. */
export function phrasesOf(keywords: Keywords): string[] {
  return [...keywords.values()].flatMap((phrases) => phrases.map(({ text }) => text));
}

function table(rows: readonly (readonly [string, TokenType])[]): Keywords {
  const byFirst = new Map<string, Phrase[]>();
  for (const [text, type] of rows) {
    const words = text.split(' ');
    const [first = text] = words;
    const phrases = byFirst.get(first) ?? [];
    // `at least` is a clause of limits and a bound in any quantity: the first row decides.
    if (phrases.some((phrase) => phrase.text === text)) continue;
    phrases.push({ words, text, type });
    phrases.sort((a, b) => b.words.length - a.words.length);
    byFirst.set(first, phrases);
  }
  return byFirst;
}

function merge(first: IToken, last: IToken, code: string, type: TokenType, payload: unknown): IToken {
  const image = code.slice(first.startOffset, endOf(last));
  return {
    image,
    startOffset: first.startOffset,
    tokenType: type,
    tokenTypeIdx: type.tokenTypeIdx ?? 0,
    payload,
  } as IToken;
}

function endsNumber(token: IToken | undefined): boolean {
  const type = token?.tokenType;
  return type === NumberToken || type === UnitToken || type === Hole || type === TolerancePair;
}

/** Two units of different kinds make no range: in `15 min to 90 °C` the word is the clause. */
function areOfTwoKinds(low: IToken | undefined, high: IToken | undefined): boolean {
  if (low?.tokenType !== UnitToken || high?.tokenType !== UnitToken) return false;
  const a = (low.payload as UnitPayload).unit?.kind;
  const b = (high.payload as UnitPayload).unit?.kind;
  return a !== undefined && b !== undefined && a !== b;
}

function startsNumber(token: IToken | undefined): boolean {
  return token?.tokenType === NumberToken || token?.tokenType === Hole;
}
