// The kinds of token that the lexer makes and those that the keyword pass turns words into. Three categories say
// where a token is not expected, so that every grammar rule can take any token: the grammar cannot fail.
import { type CustomPatternMatcherFunc, createToken, type IToken, Lexer, type TokenType } from 'chevrotain';
import * as scan from './patterns.js';
import type { TokenKind } from './tree.js';

const category = (name: string): TokenType => createToken({ name, pattern: Lexer.NA });

/** Any token: what is left over on a line with a fixed form. */
export const AnyToken = category('AnyToken');
/** Tokens that open no clause of an entry or statement. */
export const NoClause = category('NoClause');
/** Tokens that open no clause of a rule. */
export const NoRuleClause = category('NoRuleClause');
/** Tokens that neither part clauses nor open a guard. */
export const NoGuard = category('NoGuard');
/** Tokens that raw text may hold. */
export const RawToken = category('RawToken');

const kinds = new Map<TokenType, TokenKind>();

/** Digits, and the characters that a number may start with. */
const NUMBER_STARTS = '0123456789.-–−½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅑⅒';
/** One code of every bucket in which chevrotain looks patterns up by their first character. */
const ANY_START = Array.from({ length: 256 + 256 }, (_, i) =>
  i < 256 ? i : Math.min(255 * (i - 255), 0xffff),
);

function token(name: string, kind: TokenKind, ...categories: TokenType[]): TokenType {
  return register(
    createToken({ name, pattern: Lexer.NA, categories: [AnyToken, NoGuard, ...categories] }),
    kind,
  );
}

function lexed(
  name: string,
  kind: TokenKind,
  pattern: CustomPatternMatcherFunc,
  starts: string,
  ...categories: TokenType[]
): TokenType {
  const hints = starts === '' ? ANY_START : [...starts];
  return register(
    createToken({
      name,
      pattern,
      line_breaks: false,
      start_chars_hint: hints,
      categories: [AnyToken, NoGuard, ...categories],
    }),
    kind,
  );
}

function register(type: TokenType, kind: TokenKind): TokenType {
  kinds.set(type, kind);
  return type;
}

/** Blanks and line ends between tokens. */
const Blank = createToken({
  name: 'Blank',
  pattern: scan.scanBlanks,
  line_breaks: true,
  start_chars_hint: ANY_START,
  group: Lexer.SKIPPED,
});

// Lexed; the order is the order in which they are tried.
export const Day = lexed('Day', 'day', scan.scanDay, '0123456789', NoClause, NoRuleClause, RawToken);
export const TolerancePair = lexed(
  'TolerancePair',
  'tolerance',
  scan.scanTolerancePair,
  '+-–−',
  NoClause,
  NoRuleClause,
  RawToken,
);
export const PlusMinus = lexed(
  'PlusMinus',
  'plus-minus',
  scan.scanPlusMinus,
  '±+',
  NoClause,
  NoRuleClause,
  RawToken,
);
export const NumberToken = lexed('Number', 'number', scan.scanNumber, NUMBER_STARTS, NoRuleClause, RawToken);
export const UnitToken = lexed('Unit', 'unit', scan.scanUnit, '', NoClause, NoRuleClause, RawToken);
export const StringToken = lexed('String', 'string', scan.scanString, '"', NoClause, NoRuleClause, RawToken);
export const Comma = register(
  createToken({
    name: 'Comma',
    pattern: scan.scanComma,
    line_breaks: false,
    start_chars_hint: [','],
    categories: [AnyToken],
  }),
  'comma',
);
export const Hole = lexed('Hole', 'hole', scan.scanHole, '?', NoRuleClause, RawToken);
export const Dash = lexed('Dash', 'dash', scan.scanDash, '-–−', NoClause, NoRuleClause, RawToken);
export const Word = lexed('Word', 'word', scan.scanWord, '', NoClause, NoRuleClause, RawToken);
export const Junk = lexed('Junk', 'junk', scan.scanJunk, '', NoClause, NoRuleClause, RawToken);

/** The types the lexer tries, in order. */
export const LEXED_TYPES: readonly TokenType[] = [
  Blank,
  Day,
  TolerancePair,
  PlusMinus,
  NumberToken,
  UnitToken,
  StringToken,
  Comma,
  Hole,
  Dash,
  Word,
  Junk,
];

// Made by the keyword pass. `Count` is a number with its `of`.
export const Count = token('Count', 'count', NoRuleClause);
/** Clause words by the shape of what follows them. */
export const NamesWord = token('NamesWord', 'word', NoRuleClause);
export const SpecWord = token('SpecWord', 'word', NoRuleClause);
export const RawWord = token('RawWord', 'word', NoRuleClause);
export const WordsWord = token('WordsWord', 'word', NoRuleClause);
export const FlagWord = token('FlagWord', 'word', NoRuleClause);
export const EventWord = token('EventWord', 'word');
/** `at least`, `at most`. */
export const Bound = token('Bound', 'word', NoRuleClause);
/** `when`, `only when`. */
export const When = register(
  createToken({ name: 'When', pattern: Lexer.NA, categories: [AnyToken, NoRuleClause] }),
  'word',
);
// Joiners.
export const Then = token('Then', 'word', NoClause, NoRuleClause, RawToken);
export const And = token('And', 'word', NoClause, NoRuleClause, RawToken);
export const Or = token('Or', 'word', NoClause, NoRuleClause, RawToken);
export const Back = token('Back', 'word', NoRuleClause, RawToken);
/** `to` between two numbers. */
export const To = token('To', 'word', NoClause, NoRuleClause, RawToken);
// Words of lines with a fixed form.
export const From = token('From', 'word', NoClause);
export const On = token('On', 'word', NoClause);
export const By = token('By', 'word', NoClause);
export const At = token('At', 'word', NoClause);
export const Side = token('Side', 'word', NoClause);
/** `below limit`, `rejected`, `needed` and the like. */
export const IfTestWord = token('IfTestWord', 'word');
// Words of rules.
export const RuleWord = token('RuleWord', 'word');
export const Require = token('Require', 'word');
export const While = token('While', 'word');
export const Needs = token('Needs', 'word');
export const AtMostOnce = token('AtMostOnce', 'word');
/** `next`, `step ends`. */
export const RuleEnd = token('RuleEnd', 'word', NoRuleClause);
export const It = token('It', 'word', NoRuleClause);
export const AnyWord = token('AnyWord', 'word', NoRuleClause);
export const Marked = token('Marked', 'word', NoRuleClause);
export const Over = token('Over', 'word', NoRuleClause);
export const Not = token('Not', 'word', NoRuleClause);

/** Every token type the parser must know. */
export const TOKEN_TYPES: readonly TokenType[] = [
  AnyToken,
  NoClause,
  NoRuleClause,
  NoGuard,
  RawToken,
  ...kinds.keys(),
];

/** The kind that the syntax tree shows for a token. */
export function kindOf(token: IToken): TokenKind {
  return kinds.get(token.tokenType) ?? 'junk';
}

/** The offset behind a token. A word read as another keeps the end it was written with in `endOffset`. */
export function endOf(token: IToken): number {
  return token.endOffset === undefined ? token.startOffset + token.image.length : token.endOffset + 1;
}

/** The word a keyword token stands for, its blanks made single; any other token's text. */
export function wordOf(token: IToken): string {
  const { payload } = token as { payload?: unknown };
  return typeof payload === 'string' ? payload : token.image;
}
