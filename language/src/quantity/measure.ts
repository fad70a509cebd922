/** The meaning of a written quantity, free of where it stands in a file. */
import { once } from '../text/once.js';
import { type Rational, rational } from './rational.js';
import type { Digits } from './read-number.js';
import type { Unit } from './unit.js';
import { unitById } from './unit-table.js';

/** One part of a compound amount: the `1 h` of `1 h 40 min`. */
export interface AmountPart {
  readonly value: Rational;
  readonly unit: Unit;
  readonly digits: Digits;
}

/** One value, perhaps with a tolerance. */
export interface Amount {
  readonly form: 'amount';
  readonly value: Rational;
  readonly unit: Unit;
  readonly digits: Digits;
  /** How far below, in `unit`, not negative. Written `-5`, or with `plus` alike `±5`. */
  readonly minus?: Rational;
  /** How far above, in `unit`, not negative. */
  readonly plus?: Rational;
  /** The tolerance as it was written in per cent of the value; `minus` and `plus` say the same in `unit`. */
  readonly percent?: { readonly minus: Rational; readonly plus: Rational };
  /** How the tolerance was written. */
  readonly toleranceDigits?: Digits;
  /** What a compound amount was written as, in falling units; `value` is their sum in the last unit. */
  readonly parts?: readonly AmountPart[];
}

/** From `low` to `high`. */
export interface Range {
  readonly form: 'range';
  readonly low: Rational;
  readonly high: Rational;
  readonly unit: Unit;
  /** How `low` was written, and `high` too unless `highDigits` says otherwise. */
  readonly digits: Digits;
  readonly highDigits?: Digits;
}

/** `at least` or `at most`. */
export interface Bound {
  readonly form: 'bound';
  readonly side: 'least' | 'most';
  readonly value: Rational;
  readonly unit: Unit;
  readonly digits: Digits;
}

export type Measure = Amount | Range | Bound;

/** One stage of a tightening: `40 ft·lbf`, `90°`, `back 180°`. */
export interface Stage {
  readonly back: boolean;
  readonly measure: Measure;
}

/** A specification in one or more stages, joined by `then`. */
export interface Spec {
  readonly stages: readonly Stage[];
}

/** The limits of a measure in the coherent unit of its kind. */
export interface Extent {
  /** The value aimed at; undefined for a range or a bound. */
  readonly nominal?: Rational;
  /** Undefined for `at most`. */
  readonly low?: Rational;
  /** Undefined for `at least`. */
  readonly high?: Rational;
}

/** The limits of a measure in its own unit; a plain amount has both limits at its value. */
export function limitsOf(measure: Measure): Extent {
  if (measure.form === 'range') return { low: measure.low, high: measure.high };
  if (measure.form === 'bound') {
    return measure.side === 'least' ? { low: measure.value } : { high: measure.value };
  }
  const { value, minus = zero, plus = zero } = measure;
  return { nominal: value, low: value.sub(minus), high: value.add(plus) };
}

/**
 * The limits of a measure in the coherent unit of its kind: N·m, Pa, m³, m, kg, s, K; degrees for an angle,
 * degrees a second for a rotation. Exact.
 */
export const toSI = once((measure: Measure): Extent => {
  const { nominal, low, high } = limitsOf(measure);
  return {
    ...(nominal === undefined ? {} : { nominal: valueToSI(nominal, measure.unit) }),
    ...(low === undefined ? {} : { low: valueToSI(low, measure.unit) }),
    ...(high === undefined ? {} : { high: valueToSI(high, measure.unit) }),
  };
});

/** One exact value in the coherent unit of its kind. */
export function valueToSI(value: Rational, unit: Unit): Rational {
  return (unit.offset === undefined ? value : value.add(unit.offset)).mul(unit.factor);
}

/** The reverse of `valueToSI`. */
export function valueFromSI(value: Rational, unit: Unit): Rational {
  const scaled = value.div(unit.factor);
  return unit.offset === undefined ? scaled : scaled.sub(unit.offset);
}

/** Why parts written one after another make no amount. */
export type CompoundProblem = 'cannot-follow' | 'not-falling' | 'not-whole';

/**
 * Folds `1 h 40 min`, `5 ft 6 in`, `2 lb 3 oz` into one value in the last unit. Only these families fold, in
 * falling units, and only the last part may have decimals. A single part folds to itself.
 */
export function foldParts(parts: readonly AmountPart[]): Amount | { readonly problem: CompoundProblem } {
  const [first] = parts;
  const last = parts.at(-1);
  if (first === undefined || last === undefined) return { problem: 'cannot-follow' };
  const { unit, digits } = last;
  if (parts.length === 1) return { form: 'amount', value: last.value, unit, digits };
  const family = compoundFamilies.find((members) => members.includes(first.unit));
  if (family === undefined) return { problem: 'cannot-follow' };
  let sum = rational(0n);
  let rank = -1;
  for (const part of parts) {
    const next = family.indexOf(part.unit);
    if (next < 0) return { problem: 'cannot-follow' };
    if (next <= rank) return { problem: 'not-falling' };
    if (part !== last && part.value.d !== 1n) return { problem: 'not-whole' };
    rank = next;
    sum = sum.add(part.value.mul(part.unit.factor));
  }
  return { form: 'amount', value: sum.div(unit.factor), unit, digits, parts };
}

/** An amount with its tolerance given in per cent of the value. */
export function withPercent(amount: Amount, minus: Rational, plus: Rational, digits?: Digits): Amount {
  const share = amount.value.abs().div(100);
  return {
    ...amount,
    minus: share.mul(minus),
    plus: share.mul(plus),
    percent: { minus, plus },
    ...(digits === undefined ? {} : { toleranceDigits: digits }),
  };
}

const zero = rational(0n);

/** Units that are written one after another, falling. */
const compoundFamilies: readonly (readonly Unit[])[] = [
  ['week', 'd', 'h', 'min', 's'].map(unitById),
  ['mi', 'yd', 'ft', 'in'].map(unitById),
  ['lb', 'oz'].map(unitById),
  ['degree', 'arcminute'].map(unitById),
  ['gal-us', 'qt-us', 'pt-us', 'fl-oz-us'].map(unitById),
  ['gal-imp', 'qt-imp', 'pt-imp', 'fl-oz-imp'].map(unitById),
];
