/** Writes measures and specifications: as the formatter writes them in a file, or as a guide prints them. */
import type { Language } from '../vocabulary/kinds.js';
import { digitsFor, type FormatOptions, formatNumber, sourceStyle } from './format-number.js';
import type { Amount, Measure, Spec } from './measure.js';
import type { Rational } from './rational.js';
import type { Unit } from './unit.js';

/** A measure as text. Source style reads back to the same measure where its kind is expected. */
export function formatMeasure(measure: Measure, options: FormatOptions = sourceStyle): string {
  const words = measureWords[options.language];
  if (options.style === 'print' && measure.unit.id === 'arcminute') return anglesText(measure, options);
  if (measure.form === 'bound') {
    const value = formatNumber(measure.value, measure.digits, options);
    return `${words[measure.side]} ${value}${unitText(measure.unit, measure.value, options)}`;
  }
  if (measure.form === 'range') {
    const { low, high, digits, highDigits = digits, unit } = measure;
    const from = formatNumber(low, digits, options);
    return `${from} ${words.to} ${formatNumber(high, highDigits, options)}${unitText(unit, high, options)}`;
  }
  return formatAmount(measure, options);
}

/** The stages of a specification, joined by `then`. */
export function formatSpec(spec: Spec, options: FormatOptions = sourceStyle): string {
  const words = measureWords[options.language];
  return spec.stages
    .map(({ back, measure }) => (back ? `${words.back} ` : '') + formatMeasure(measure, options))
    .join(` ${words.next} `);
}

/** The unit after a value, with the space it wants before it. */
export function unitText(unit: Unit, value: Rational, options: FormatOptions = sourceStyle): string {
  const text = unitSymbol(unit, value, options);
  return isTouching(unit) ? text : (options.style === 'print' ? '\u00a0' : ' ') + text;
}

/** A unit's name for a value, as it is read aloud: `newton metres`, `vueltas`. */
export function unitName(unit: Unit, value: Rational, language: Language): string {
  const { one, other } = unit.names[language];
  return isSingular(value, language) ? one : other;
}

/** The words a measure is made of. Source files are in English. */
const measureWords: Readonly<
  Record<Language, Readonly<Record<'least' | 'most' | 'to' | 'next' | 'back', string>>>
> = {
  en: { least: 'at least', most: 'at most', to: 'to', next: 'then', back: 'back' },
  es: { least: 'al menos', most: 'como máximo', to: 'a', next: 'luego', back: 'hacia atrás' },
  fr: { least: 'au moins', most: 'au plus', to: 'à', next: 'puis', back: 'en arrière' },
  de: { least: 'mindestens', most: 'höchstens', to: 'bis', next: 'dann', back: 'zurück' },
};

/** Minutes of arc as alignment sheets print them: `0°05′ to 0°10′`, `−1°30′ ±0°45′`. */
function anglesText(measure: Measure, options: FormatOptions): string {
  const words = measureWords[options.language];
  const text = (value: Rational, digits = digitsFor(value)): string => {
    const size = value.abs();
    const degrees = size.div(60n).floor();
    const minutes = formatNumber(size.sub(degrees.mul(60n)), digits, options);
    const padded = /^\d(?!\d)/.test(minutes) ? `0${minutes}` : minutes;
    return `${value.compare(0) < 0 ? '−' : ''}${degrees.toFraction()}°${padded}′`;
  };
  if (measure.form === 'bound') return `${words[measure.side]} ${text(measure.value, measure.digits)}`;
  if (measure.form === 'range')
    return `${text(measure.low, measure.digits)} ${words.to} ${text(measure.high, measure.highDigits ?? measure.digits)}`;
  const { minus, plus } = measure;
  const value = text(measure.value, measure.digits);
  if (!minus && !plus) return value;
  if (minus && plus?.equals(minus)) return `${value} ±${text(plus)}`;
  return `${value} +${plus ? text(plus) : '0'}/−${minus ? text(minus) : '0'}`;
}

function formatAmount(amount: Amount, options: FormatOptions): string {
  const { parts, unit, value } = amount;
  if (parts !== undefined) {
    const gap = isTouching(unit) ? '' : options.style === 'print' ? '\u00a0' : ' ';
    const sign = value.compare(0) < 0 ? (options.style === 'print' ? '−' : '-') : '';
    const text = parts.map(
      (part) =>
        formatNumber(part.value.abs(), part.digits, options) + unitText(part.unit, part.value.abs(), options),
    );
    const around = toleranceText(amount, options);
    const own = around === '' || amount.percent !== undefined ? '' : unitText(unit, value, options);
    return sign + text.join(gap) + around + own;
  }
  const tolerance = toleranceText(amount, options);
  const number = formatNumber(value, amount.digits, options);
  if (amount.percent === undefined) return number + tolerance + unitText(unit, value, options);
  return number + unitText(unit, value, options) + tolerance;
}

/** ` ±10`, ` +10/-5`, ` ±5 %`, or nothing. */
function toleranceText(amount: Amount, options: FormatOptions): string {
  const { minus, plus } = amount.percent ?? amount;
  if (minus === undefined && plus === undefined) return '';
  const text = (value: Rational | undefined) =>
    value === undefined || value.n === 0n
      ? '0'
      : formatNumber(value, amount.toleranceDigits ?? digitsFor(value), options);
  const percent = amount.percent === undefined ? '' : options.style === 'print' ? '\u00a0%' : ' %';
  if (minus !== undefined && plus?.equals(minus) === true) return ` ±${text(plus)}${percent}`;
  const dash = options.style === 'print' ? '−' : '-';
  return ` +${text(plus)}/${dash}${text(minus)}${percent}`;
}

function unitSymbol(unit: Unit, value: Rational, { language, style }: FormatOptions): string {
  if (unit.isWord === true) return unitName(unit, value, style === 'source' ? 'en' : language);
  if (style === 'source') return unit.symbol;
  return unit.localSymbols?.[language] ?? unit.symbol;
}

/** Degrees and minutes of arc stand against their number (SP 811, 7.2). */
function isTouching(unit: Unit): boolean {
  return unit.symbol === '°' || unit.symbol === '′';
}

/** One, and a part of one, take the singular; in French anything under two does. */
function isSingular(value: Rational, language: Language): boolean {
  const size = value.abs();
  if (language === 'fr') return size.compare(2) < 0;
  return size.n !== 0n && size.compare(1) <= 0;
}
