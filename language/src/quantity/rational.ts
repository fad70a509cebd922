/**
 * Exact fractions. Every value, factor and tolerance of the language is one of these, so a conversion is
 * rounded once, when it is printed, and never on the way. The arithmetic is fraction.js (MIT, bigint).
 */
import { Fraction } from 'fraction.js';

export { Fraction as Rational };

/** Numerator with its sign; the denominator `d` is always positive and in lowest terms. */
export function numerator(value: Fraction): bigint {
  return value.s * value.n;
}

/** An exact value from a decimal (`0.3048`), a fraction (`5/9`), an integer or a pair of integers. */
export function rational(value: string | bigint | number, denominator: bigint = 1n): Fraction {
  return typeof value === 'bigint' ? new Fraction(value, denominator) : new Fraction(value);
}

/** Ten to an integer power, negative powers included. */
export function powerOfTen(exponent: number): Fraction {
  const power = 10n ** BigInt(Math.abs(exponent));
  return exponent >= 0 ? new Fraction(power, 1n) : new Fraction(1n, power);
}

/** The smaller of two. */
export function least(a: Fraction, b: Fraction): Fraction {
  return a.compare(b) <= 0 ? a : b;
}

/** The nearest floating-point number, for estimates and for values that are counts; never for conversion. */
export function numberOf(value: Fraction): number {
  return value.valueOf();
}
