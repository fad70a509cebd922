/**
 * Writes numbers. Source style is the language's own notation and reads back to the same value; print style is
 * for guides: the language's decimal sign, a narrow no-break space between thousands (SP 811, 10.5.3; groups
 * from five digits on), a true minus. No run-time locale is asked, so every machine writes the same.
 */
import type { Language } from '../vocabulary/kinds.js';
import { type Rational, rational } from './rational.js';
import type { Digits } from './read-number.js';
import { exactDecimals, roundTo } from './round.js';

export interface FormatOptions {
  readonly language: Language;
  readonly style: 'source' | 'print';
}

/** The notation of the files themselves. */
export const sourceStyle: FormatOptions = { language: 'en', style: 'source' };

/**
 * A number as text. A value written as a fraction stays one. In source style a value that its digits cannot
 * hold is written with as many as it needs, or as a fraction; print style rounds it to its digits.
 */
export function formatNumber(value: Rational, digits: Digits, options: FormatOptions = sourceStyle): string {
  const sign = value.s < 0n ? (options.style === 'print' ? '−' : '-') : '';
  const size = value.abs();
  if (digits.denominator !== undefined && size.d !== 1n) return sign + mixed(size, options);
  const needed = exactDecimals(size);
  if (options.style === 'source' && needed === undefined) return sign + mixed(size, options);
  const decimals = options.style === 'source' ? Math.max(digits.decimals, needed ?? 0) : digits.decimals;
  return sign + decimalText(size, decimals, options);
}

/** The digits that a value needs, for values that nobody wrote. */
export function digitsFor(value: Rational): Digits {
  const decimals = exactDecimals(value);
  const significant = value.n.toString().length;
  return decimals === undefined
    ? { significant, decimals: 0, denominator: value.d }
    : { significant, decimals };
}

/** The space between the groups of a printed number. */
export const NARROW_SPACE = '\u202f';

function decimalText(size: Rational, decimals: number, { language, style }: FormatOptions): string {
  const scaled = roundTo(size, decimals).mul(rational(10n ** BigInt(decimals)));
  const digits = scaled.n.toString().padStart(decimals + 1, '0');
  const whole = grouped(digits.slice(0, digits.length - decimals), style === 'print' ? NARROW_SPACE : ' ');
  const point = style === 'print' && language !== 'en' ? ',' : '.';
  return decimals === 0 ? whole : whole + point + digits.slice(digits.length - decimals);
}

function mixed(size: Rational, { style }: FormatOptions): string {
  const whole = size.n / size.d;
  const fraction = `${size.n % size.d}/${size.d}`;
  if (whole === 0n) return fraction;
  return `${grouped(whole.toString(), style === 'print' ? NARROW_SPACE : ' ')}${style === 'print' ? '\u00a0' : ' '}${fraction}`;
}

function grouped(whole: string, space: string): string {
  return whole.length < 5 ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, space);
}
