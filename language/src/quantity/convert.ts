/**
 * Conversion. Exact inside; rounded by NIST SP 811 (2008) B.7.2 when shown.
 *
 * The rule, worked out from B.7.2's own example (36 ft is 11.0 m, neither 11 nor 10.97): keep the fewest digits
 * whose largest relative rounding error is not above that of the value as written, and never under two digits,
 * so that `2 US qt` is 1.9 L. Limits round inside, so a converted limit never allows what the written one
 * forbids. A temperature point keeps the decimals it was written with: a relative error means nothing on a
 * scale with an arbitrary zero (common practice in shop books: 212 °F is 100 °C).
 */
import { quantityKinds } from './dimension.js';
import { type Amount, limitsOf, type Measure, valueFromSI, valueToSI } from './measure.js';
import { least, powerOfTen, type Rational, rational } from './rational.js';
import type { Digits } from './read-number.js';
import { exactDecimals, magnitude, type RoundingMode, relativeRoundingError, roundTo } from './round.js';
import type { Unit } from './unit.js';
import { findUnit } from './unit-table.js';

/** Whether a value in one unit can be written in the other: same kind, not just same dimension. */
export function compatible(a: Unit, b: Unit): boolean {
  return a.kind === b.kind;
}

/** Why one unit cannot be turned into the other, for the person who asked. `written` is the value as typed. */
export function explainIncompatible(from: Unit, to: Unit, written: string = from.symbol): string {
  const what = quantityKinds[from.kind];
  const wanted = quantityKinds[to.kind];
  const kinds = `${from.kind}/${to.kind}`;
  const hint = hints.get(kinds) ?? `${wanted.phrase} is written as in ${wanted.example}`;
  return `${written} is ${what.phrase}; ${to.symbol} measures ${to.kind}: ${hint}`;
}

/** One exact value from one unit to another of its kind. */
export function convertValue(value: Rational, from: Unit, to: Unit): Rational {
  return from === to ? value : valueFromSI(valueToSI(value, from), to);
}

/**
 * The same measure in another unit of its kind: exact with `exact`, else rounded as `convertRounded` does.
 * Exact results carry the digits that write them out, or seven where no decimals do. Throws a RangeError for
 * units of two kinds; ask `compatible` first.
 */
export function convert(measure: Measure, unit: Unit, options: { readonly exact?: boolean } = {}): Measure {
  if (!compatible(measure.unit, unit)) throw new RangeError(explainIncompatible(measure.unit, unit));
  if (measure.unit === unit) return withoutParts(measure);
  return options.exact === true ? convertExactly(measure, unit) : convertRounded(measure, unit);
}

/** The same measure in another unit of its kind, rounded once, limits inside. Throws like `convert`. */
export function convertRounded(measure: Measure, unit: Unit): Measure {
  if (!compatible(measure.unit, unit)) throw new RangeError(explainIncompatible(measure.unit, unit));
  if (measure.unit === unit) return withoutParts(measure);
  const turn = (value: Rational) => convertValue(value, measure.unit, unit);
  const keep = (value: Rational, digits: Digits) => decimalsToKeep(value, digits, measure.unit, turn(value));
  if (measure.form === 'bound') {
    const decimals = keep(measure.value, measure.digits);
    const value = roundTo(turn(measure.value), decimals, measure.side === 'least' ? 'up' : 'down');
    return { ...measure, value, unit, digits: digitsAt(value, decimals) };
  }
  if (measure.form === 'range') {
    const { digits, highDigits = digits } = measure;
    const decimals = Math.max(keep(measure.low, digits), keep(measure.high, highDigits));
    const { low, high, decimals: kept } = roundInside(turn(measure.low), turn(measure.high), decimals);
    return { form: 'range', low, high, unit, digits: digitsAt(high, kept) };
  }
  return roundAmount(measure, unit, turn, keep(measure.value, measure.digits));
}

/**
 * The unit of the other system to show beside a measure, or undefined for units that have none. Small torques
 * turn to in·lbf (under 20 N·m) and small volumes to US quarts: common practice, as wrenches and bottles are
 * marked.
 */
export function otherSystem(measure: Measure): Unit | undefined {
  const { unit } = measure;
  const { low, high } = limitsOf(measure);
  const largest = (high ?? low ?? rational(0n)).abs();
  const small = unit.smallPartner;
  const isSmall = small !== undefined && largest.compare(small.below) < 0;
  const partner = isSmall ? small.unit : unit.partner;
  return partner === undefined ? undefined : findUnit(partner);
}

/** Mix-ups that deserve more than the general advice. */
const hints = new Map<string, string>([
  ['temperature/temperature difference', 'for a rise or a drop, write 10 K or 18 Δ°F'],
  ['temperature difference/temperature', 'for a temperature on the thermometer, write 80 °C or 176 °F'],
  ['mass/torque', 'a torque is a force at a distance, as in 115 N·m or 85 ft·lbf'],
  ['mass/volume', 'the weight of a fluid needs its density to become a volume'],
  ['volume/mass', 'the volume of a fluid needs its density to become a weight'],
  ['frequency/rotation speed', 'write revolutions, as in 800 rpm'],
]);

/** A fraction of an inch names a size, read on a rule to a sixteenth whatever its denominator. */
const RULE_MARKS = 16n;
const FEWEST_DIGITS = 2;
const MOST_EXTRA_DECIMALS = 12;
const EXACT_DIGITS = 7;
const HELD_DIGITS = 3;

/** How many decimals the converted value keeps; negative for tens and hundreds. */
function decimalsToKeep(value: Rational, digits: Digits, from: Unit, converted: Rational): number {
  if (from.offset !== undefined || value.n === 0n) return digits.decimals;
  const allowed = resolution(value, digits, from).div(2).div(value.abs());
  const first = FEWEST_DIGITS - 1 - magnitude(converted);
  for (let decimals = first; decimals < first + MOST_EXTRA_DECIMALS; decimals += 1) {
    const rounded = roundTo(converted, decimals);
    if (rounded.n !== 0n && relativeRoundingError(rounded, decimals).compare(allowed) <= 0) return decimals;
  }
  return first + MOST_EXTRA_DECIMALS;
}

/** The step the written value was read in. */
function resolution(value: Rational, digits: Digits, unit: Unit): Rational {
  const { denominator, decimals } = digits;
  if (denominator === undefined) return powerOfTen(decimals > 0 ? -decimals : zerosHoldingPlaces(value));
  return rational(1n, unit.kind === 'length' && denominator < RULE_MARKS ? RULE_MARKS : denominator);
}

/**
 * Zeros that only hold a place: from the fourth digit on, the trailing zeros of a whole number. So 14 300 lb is
 * 6490 kg and 80 ft·lbf stays 108 N·m (two digits, as in the vectors of B.7.2); common practice.
 */
function zerosHoldingPlaces(value: Rational): number {
  const digits = value.n.toString();
  const zeros = digits.length - digits.replace(/0+$/, '').length;
  return Math.max(0, Math.min(zeros, digits.length - HELD_DIGITS));
}

function roundAmount(measure: Amount, unit: Unit, turn: (v: Rational) => Rational, decimals: number): Amount {
  const value = roundTo(turn(measure.value), decimals);
  const plain: Amount = { form: 'amount', value, unit, digits: digitsAt(value, decimals) };
  if (measure.minus === undefined && measure.plus === undefined) return plain;
  const { low = measure.value, high = measure.value } = limitsOf(measure);
  // The tolerance closes to what both limits allow around the rounded value, at no fewer decimals than it.
  for (let extra = 0; extra <= MOST_EXTRA_DECIMALS; extra += 1) {
    const kept = decimals + extra;
    const middle = roundTo(turn(measure.value), kept, towardsTolerance(measure));
    const minus = roundTo(middle.sub(turn(low)), kept, 'down');
    const plus = roundTo(turn(high).sub(middle), kept, 'down');
    if (isUsable(minus, measure.minus) && isUsable(plus, measure.plus)) {
      const alike = measure.minus !== undefined && measure.plus?.equals(measure.minus) === true;
      const side = alike ? least(minus, plus) : undefined;
      return {
        ...plain,
        value: middle,
        digits: digitsAt(middle, kept),
        ...(measure.minus === undefined ? {} : { minus: side ?? minus }),
        ...(measure.plus === undefined ? {} : { plus: side ?? plus }),
      };
    }
  }
  return plain;
}

/** A value with no tolerance on one side rounds away from that side. */
function towardsTolerance({ minus, plus }: Amount): RoundingMode {
  const hasMinus = minus !== undefined && minus.n !== 0n;
  const hasPlus = plus !== undefined && plus.n !== 0n;
  if (hasMinus === hasPlus) return 'nearest';
  return hasPlus ? 'up' : 'down';
}

/** A tolerance that was there must not round away, nor turn over. */
function isUsable(rounded: Rational, written: Rational | undefined): boolean {
  return written === undefined || written.n === 0n ? rounded.s >= 0n : rounded.s > 0n && rounded.n > 0n;
}

function roundInside(low: Rational, high: Rational, decimals: number) {
  for (let kept = decimals; kept <= decimals + MOST_EXTRA_DECIMALS; kept += 1) {
    const inner = { low: roundTo(low, kept, 'up'), high: roundTo(high, kept, 'down'), decimals: kept };
    if (inner.low.compare(inner.high) < 0) return inner;
  }
  return { low: roundTo(low, decimals), high: roundTo(high, decimals), decimals };
}

function convertExactly(measure: Measure, unit: Unit): Measure {
  const turn = (value: Rational) => convertValue(value, measure.unit, unit);
  const scale = measure.unit.factor.div(unit.factor);
  if (measure.form === 'range') {
    const low = turn(measure.low);
    const high = turn(measure.high);
    return { form: 'range', low, high, unit, digits: exactDigits(low), highDigits: exactDigits(high) };
  }
  const value = turn(measure.value);
  const digits = exactDigits(value);
  if (measure.form === 'bound') return { ...measure, value, unit, digits };
  return {
    form: 'amount',
    value,
    unit,
    digits,
    ...(measure.minus === undefined ? {} : { minus: measure.minus.mul(scale) }),
    ...(measure.plus === undefined ? {} : { plus: measure.plus.mul(scale) }),
    ...(measure.percent === undefined ? exactTolerance(measure, scale) : { percent: measure.percent }),
  };
}

function exactTolerance({ minus, plus }: Amount, scale: Rational): { toleranceDigits?: Digits } {
  const widest = plus === undefined || (minus !== undefined && minus.compare(plus) > 0) ? minus : plus;
  return widest === undefined ? {} : { toleranceDigits: exactDigits(widest.mul(scale)) };
}

function exactDigits(value: Rational): Digits {
  const decimals = exactDecimals(value);
  const first = magnitude(value);
  if (decimals !== undefined && decimals + first + 1 <= EXACT_DIGITS * 2) return digitsAt(value, decimals);
  return digitsAt(value, Math.max(0, EXACT_DIGITS - 1 - first));
}

function digitsAt(value: Rational, decimals: number): Digits {
  return { significant: Math.max(1, magnitude(value) + 1 + decimals), decimals: Math.max(0, decimals) };
}

function withoutParts(measure: Measure): Measure {
  if (measure.form !== 'amount' || measure.parts === undefined) return measure;
  const { parts: _, ...whole } = measure;
  return whole;
}
