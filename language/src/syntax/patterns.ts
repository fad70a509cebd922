// The patterns of the lexer, as functions: chevrotain compiles regular expressions anew without their `u` flag, and
// a number knows more than its length. All scan forward only, so a line of any length takes linear time.
import type { CustomPatternMatcherFunc, CustomPatternMatcherReturn, IToken } from 'chevrotain';
import { type ReadNumber, type ReadUnit, readNumber, readUnit } from '../quantity/index.js';
import { COMMA_CODE, isBlank, isDigit, isLetter, QUOTE } from './characters.js';

/** What a number token carries: what was read, and its sign. */
export interface NumberPayload {
  readonly read: ReadNumber;
  readonly negative: boolean;
}

/** What a tolerance pair carries. */
export interface TolerancePayload {
  readonly plus: ReadNumber;
  readonly minus: ReadNumber;
  /** Written with its lower side first. */
  readonly reversed: boolean;
}

export type UnitPayload = ReadUnit;

export const scanBlanks: CustomPatternMatcherFunc = (text, offset) => {
  let end = offset;
  while (end < text.length && isBlank(text.charCodeAt(end))) end += 1;
  return end > offset ? found(text, offset, end) : null;
};

/** `2026-10-05`. */
export const scanDay: CustomPatternMatcherFunc = (text, offset) => {
  const form = [DIGIT, DIGIT, DIGIT, DIGIT, HYPHEN, DIGIT, DIGIT, HYPHEN, DIGIT, DIGIT];
  const fits = form.every((want, i) => {
    const code = text.charCodeAt(offset + i);
    return want === DIGIT ? isDigit(code) : code === want;
  });
  const end = offset + form.length;
  return fits && !isDigit(text.charCodeAt(end)) && !isLetter(text.charCodeAt(end))
    ? found(text, offset, end)
    : null;
};

/** `+10/-5`; and `-5/+10`, which is reported. */
export const scanTolerancePair: CustomPatternMatcherFunc = (text, offset) => {
  const reversed = isDash(text.charCodeAt(offset));
  if (!reversed && text.charCodeAt(offset) !== PLUS) return null;
  const first = readNumber(text, offset + 1);
  if (first === undefined) return null;
  let at = first.end;
  while (text.charCodeAt(at) === 0x20) at += 1;
  const hasSlash = text.charCodeAt(at) === SLASH;
  if (hasSlash) at += 1;
  while (text.charCodeAt(at) === 0x20) at += 1;
  const sign = text.charCodeAt(at);
  if (reversed ? !hasSlash || sign !== PLUS : !isDash(sign)) return null;
  const second = readNumber(text, at + 1);
  if (second === undefined) return null;
  const sides = reversed ? { plus: second, minus: first } : { plus: first, minus: second };
  return found(text, offset, second.end, { ...sides, reversed } satisfies TolerancePayload);
};

/** `±`, `+/-`. */
export const scanPlusMinus: CustomPatternMatcherFunc = (text, offset) => {
  if (text.charCodeAt(offset) === 0xb1) return found(text, offset, offset + 1);
  return text.startsWith('+/', offset) && isDash(text.charCodeAt(offset + 2))
    ? found(text, offset, offset + 3)
    : null;
};

/** A number; a sign belongs to it only after a blank or a comma, or where the code starts. */
export const scanNumber: CustomPatternMatcherFunc = (text, offset) => {
  const isSigned = isDash(text.charCodeAt(offset));
  if (
    isSigned &&
    offset > 0 &&
    !isBlank(text.charCodeAt(offset - 1)) &&
    text.charCodeAt(offset - 1) !== COMMA_CODE
  )
    return null;
  const read = readNumber(text, isSigned ? offset + 1 : offset);
  return read === undefined
    ? null
    : found(text, offset, read.end, { read, negative: isSigned } satisfies NumberPayload);
};

/** A unit of the table, only straight after a number, a tolerance, a `?` or a per cent sign. */
export const scanUnit: CustomPatternMatcherFunc = (text, offset, matched) => {
  const before = matched[matched.length - 1];
  if (before === undefined || !takesUnit(before)) return null;
  // An inch mark after a blank is a quotation mark.
  const isApart = offset > before.startOffset + before.image.length;
  const read = readUnit(text, isApart ? offset - 1 : offset);
  return read === undefined || read.start !== offset
    ? null
    : found(text, offset, read.end, read satisfies UnitPayload);
};

/** `"…"`; one that is never closed runs to the end of the code. After a digit the mark means inches. */
export const scanString: CustomPatternMatcherFunc = (text, offset) => {
  if (text.charCodeAt(offset) !== QUOTE || isDigit(text.charCodeAt(offset - 1))) return null;
  let end = offset + 1;
  while (end < text.length && text.charCodeAt(end) !== QUOTE && !isLineEnd(text.charCodeAt(end))) end += 1;
  return found(text, offset, text.charCodeAt(end) === QUOTE ? end + 1 : trimmedEnd(text, offset, end));
};

export const scanComma: CustomPatternMatcherFunc = (text, offset) =>
  text.charCodeAt(offset) === COMMA_CODE ? found(text, offset, offset + 1) : null;

export const scanHole: CustomPatternMatcherFunc = (text, offset) =>
  text.charCodeAt(offset) === 0x3f ? found(text, offset, offset + 1) : null;

export const scanDash: CustomPatternMatcherFunc = (text, offset) =>
  isDash(text.charCodeAt(offset)) ? found(text, offset, offset + 1) : null;

/** A letter, then letters and digits, joined by single `- . · / × ’` or by a comma between digits. */
export const scanWord: CustomPatternMatcherFunc = (text, offset) => {
  if (!isLetter(text.charCodeAt(offset))) return null;
  let end = offset + 1;
  for (;;) {
    const code = text.charCodeAt(end);
    if (isWordPart(code)) end += 1;
    else if (JOINERS.has(code) && isWordPart(text.charCodeAt(end + 1))) end += 2;
    else if (code === COMMA_CODE && isDigit(text.charCodeAt(end - 1)) && isDigit(text.charCodeAt(end + 1)))
      end += 2;
    else return found(text, offset, end);
  }
};

/** Whatever nothing else takes: one character, or a run of the same one. */
export const scanJunk: CustomPatternMatcherFunc = (text, offset) => {
  const code = text.charCodeAt(offset);
  let end = offset + 1;
  while (end < text.length && text.charCodeAt(end) === code) end += 1;
  return found(text, offset, end);
};

const DIGIT = -1;
const HYPHEN = 0x2d;
const PLUS = 0x2b;
const SLASH = 0x2f;
/** `- . · / × ’` and the apostrophe that keyboards have. */
const JOINERS = new Set([HYPHEN, 0x2e, 0xb7, SLASH, 0xd7, 0x2019, 0x27]);
const TAKES_UNIT = new Set(['Number', 'TolerancePair', 'Hole']);

function found(
  text: string,
  start: number,
  end: number,
  payload?: NumberPayload | TolerancePayload | UnitPayload,
): CustomPatternMatcherReturn {
  const match: CustomPatternMatcherReturn = [text.slice(start, end)];
  if (payload !== undefined) match.payload = payload;
  return match;
}

function takesUnit(before: IToken): boolean {
  return TAKES_UNIT.has(before.tokenType.name) || (before.tokenType.name === 'Unit' && before.image === '%');
}

function isDash(code: number): boolean {
  return code === HYPHEN || code === 0x2013 || code === 0x2212;
}

function isWordPart(code: number): boolean {
  return isLetter(code) || isDigit(code);
}

function isLineEnd(code: number): boolean {
  return code === 0x0a || code === 0x0d;
}

function trimmedEnd(text: string, start: number, end: number): number {
  let at = end;
  while (at > start + 1 && isBlank(text.charCodeAt(at - 1))) at -= 1;
  return at;
}
