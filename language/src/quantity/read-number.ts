/**
 * Reads a number as a workshop writes it: `115`, `14 300`, `.5`, `3/4`, `1 1/2`, `½`; and understands, to
 * report them, `1,5`, `14,300` and `1-1/2`. One pass by character codes: the lexer calls it on every digit.
 */
import { Rational } from './rational.js';
import { isSpace } from './read-unit.js';

/** How precisely a number was written. */
export interface Digits {
  /** Significant digits; trailing zeros of a whole number count, as in the examples of SP 811 B.7.2. */
  readonly significant: number;
  /** Digits after the decimal sign. */
  readonly decimals: number;
  /** The denominator, for a number written as a fraction. */
  readonly denominator?: bigint;
}

/** A form that is understood but not the language's own. */
export type NumberProblem = 'decimal-comma' | 'thousands-comma' | 'dashed-fraction';

/** One thing a problematic number may mean, in the form to write. */
export interface NumberReading {
  readonly text: string;
  readonly value: Rational;
  readonly digits: Digits;
}

/** A number found in a text. With a problem, `value` is the likeliest of `readings`. */
export interface ReadNumber {
  readonly end: number;
  readonly value: Rational;
  readonly digits: Digits;
  readonly problem?: NumberProblem;
  readonly readings?: readonly NumberReading[];
}

/** Reads the number that starts at `offset`; no sign, no blank before it. Undefined where none starts. */
export function readNumber(text: string, offset: number): ReadNumber | undefined {
  const first = text.charCodeAt(offset);
  const vulgar = vulgarFractions.get(first);
  if (vulgar !== undefined) return fraction(0n, vulgar[0], vulgar[1], offset + 1);
  if (first === DOT) {
    const end = digitsEnd(text, offset + 1);
    return end > offset + 1 ? decimal('0', text.slice(offset + 1, end), end) : undefined;
  }
  const end = digitsEnd(text, offset);
  if (end === offset) return undefined;
  const whole = text.slice(offset, end);
  return (
    simpleFraction(text, whole, end) ??
    mixedFraction(text, whole, end) ??
    withComma(text, whole, end) ??
    plain(text, whole, end)
  );
}

const DOT = 0x2e;
const COMMA = 0x2c;
const DASH = 0x2d;
const SLASH = 0x2f;
const FRACTION_SLASH = 0x2044;

const vulgarFractions = new Map<number, readonly [bigint, bigint]>(
  (
    [
      ['½', 1n, 2n],
      ['⅓', 1n, 3n],
      ['⅔', 2n, 3n],
      ['¼', 1n, 4n],
      ['¾', 3n, 4n],
      ['⅕', 1n, 5n],
      ['⅖', 2n, 5n],
      ['⅗', 3n, 5n],
      ['⅘', 4n, 5n],
      ['⅙', 1n, 6n],
      ['⅚', 5n, 6n],
      ['⅛', 1n, 8n],
      ['⅜', 3n, 8n],
      ['⅝', 5n, 8n],
      ['⅞', 7n, 8n],
      ['⅑', 1n, 9n],
      ['⅒', 1n, 10n],
    ] as const
  ).map(([character, n, d]) => [character.charCodeAt(0), [n, d]]),
);

/** `3/4`, `5/4`. A zero below the line is no number. */
function simpleFraction(text: string, whole: string, at: number): ReadNumber | undefined {
  const end = denominatorEnd(text, at);
  if (end === undefined) return undefined;
  return fraction(0n, BigInt(whole), BigInt(text.slice(at + 1, end)), end);
}

/** `1 1/2`, `1½`, `1 ½`, and with the problem named `1-1/2`. The fraction part must be under one. */
function mixedFraction(text: string, whole: string, at: number): ReadNumber | undefined {
  const dashed = text.charCodeAt(at) === DASH;
  let start = at;
  if (dashed) start += 1;
  else while (isSpace(text.charCodeAt(start))) start += 1;
  const vulgar = vulgarFractions.get(text.charCodeAt(start));
  let read: ReadNumber | undefined;
  if (vulgar !== undefined) {
    read = fraction(BigInt(whole), vulgar[0], vulgar[1], start + 1);
  } else if (start > at) {
    const over = digitsEnd(text, start);
    const end = over > start ? denominatorEnd(text, over) : undefined;
    if (end === undefined) return undefined;
    const above = BigInt(text.slice(start, over));
    const below = BigInt(text.slice(over + 1, end));
    if (above === 0n || above >= below) return undefined;
    read = fraction(BigInt(whole), above, below, end);
  }
  if (read === undefined || !dashed) return read;
  const { value, digits } = read;
  return { ...read, problem: 'dashed-fraction', readings: [{ text: value.toFraction(true), value, digits }] };
}

/** A comma between digits: a decimal sign, a thousands sign, or either. A list (`1,2,3`) is left alone. */
function withComma(text: string, whole: string, at: number): ReadNumber | undefined {
  if (text.charCodeAt(at) !== COMMA) return undefined;
  const groups = [whole];
  let end = at;
  while (text.charCodeAt(end) === COMMA && isDigit(text.charCodeAt(end + 1))) {
    const groupEnd = digitsEnd(text, end + 1);
    groups.push(text.slice(end + 1, groupEnd));
    end = groupEnd;
  }
  if (groups.length === 1) return undefined;
  const [, ...after] = groups;
  const grouped = whole.length <= 3 && !whole.startsWith('0') && after.every((group) => group.length === 3);
  if (!grouped && groups.length > 2) return undefined;
  const tailEnd = grouped && text.charCodeAt(end) === DOT ? digitsEnd(text, end + 1) : end;
  const tail = tailEnd > end + 1 ? text.slice(end + 1, tailEnd) : '';
  const readings: NumberReading[] = [];
  if (grouped) readings.push(asReading(groups.join(''), tail));
  if (groups.length === 2 && tail === '') readings.push(asReading(whole, after[0] ?? ''));
  const [likeliest] = readings;
  if (likeliest === undefined) return undefined;
  return {
    end: tail === '' ? end : tailEnd,
    value: likeliest.value,
    digits: likeliest.digits,
    problem: grouped ? 'thousands-comma' : 'decimal-comma',
    readings,
  };
}

/** `115`, `22.0`, `14 300`, `14 300.5`; and `1.234,5`, whose point parts thousands. */
function plain(text: string, whole: string, at: number): ReadNumber {
  let digits = whole;
  let end = at;
  if (whole.length <= 3 && !whole.startsWith('0')) {
    for (let group = groupEnd(text, end); group !== undefined; group = groupEnd(text, end)) {
      digits += text.slice(end + 1, group);
      end = group;
    }
  }
  if (text.charCodeAt(end) !== DOT) return decimal(digits, '', end);
  const decimalsEnd = digitsEnd(text, end + 1);
  if (decimalsEnd === end + 1) return decimal(digits, '', end);
  const decimals = text.slice(end + 1, decimalsEnd);
  const european = decimals.length === 3 && text.charCodeAt(decimalsEnd) === COMMA;
  const tailEnd = european ? digitsEnd(text, decimalsEnd + 1) : decimalsEnd;
  if (!european || tailEnd === decimalsEnd + 1) return decimal(digits, decimals, decimalsEnd);
  const meant = asReading(digits + decimals, text.slice(decimalsEnd + 1, tailEnd));
  return {
    end: tailEnd,
    value: meant.value,
    digits: meant.digits,
    problem: 'decimal-comma',
    readings: [meant],
  };
}

/** The end of one more group of thousands: a blank and exactly three digits that begin no fraction. */
function groupEnd(text: string, at: number): number | undefined {
  if (!isSpace(text.charCodeAt(at))) return undefined;
  const end = digitsEnd(text, at + 1);
  const isFraction = denominatorEnd(text, end) !== undefined;
  return end === at + 4 && !isFraction ? end : undefined;
}

function decimal(whole: string, decimals: string, end: number): ReadNumber {
  const scale = decimals.length === 0 ? 1n : 10n ** BigInt(decimals.length);
  return { end, value: new Rational(BigInt(whole + decimals), scale), digits: digitsOf(whole, decimals) };
}

function digitsOf(whole: string, decimals: string): Digits {
  const all = whole + decimals;
  let leading = 0;
  while (leading < all.length - 1 && all.charCodeAt(leading) === 0x30) leading += 1;
  return { significant: all.length - leading, decimals: decimals.length };
}

function fraction(whole: bigint, above: bigint, below: bigint, end: number): ReadNumber | undefined {
  if (below === 0n) return undefined;
  const value = new Rational(whole * below + above, below);
  const significant = value.n.toString().length;
  if (value.d === 1n) return { end, value, digits: { significant, decimals: 0 } };
  return { end, value, digits: { significant, decimals: 0, denominator: value.d } };
}

function asReading(whole: string, decimals: string): NumberReading {
  const { value, digits } = decimal(whole, decimals, 0);
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, ' ') : whole;
  return { text: decimals === '' ? grouped : `${grouped}.${decimals}`, value, digits };
}

function denominatorEnd(text: string, at: number): number | undefined {
  const code = text.charCodeAt(at);
  if (code !== SLASH && code !== FRACTION_SLASH) return undefined;
  const end = digitsEnd(text, at + 1);
  return end > at + 1 ? end : undefined;
}

function digitsEnd(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end += 1;
  return end;
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}
