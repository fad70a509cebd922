/** Rounding of exact values, NIST SP 811 (2008) B.7.1: once, from the exact value, ties to the even digit. */
import { numerator, powerOfTen, type Rational, rational } from './rational.js';

/** `up` and `down` mean towards plus and minus infinity: a limit is rounded to the safe side. */
export type RoundingMode = 'nearest' | 'up' | 'down';

/** Rounds to a number of decimals; negative decimals round to tens, hundreds. */
export function roundTo(value: Rational, decimals: number, mode: RoundingMode = 'nearest'): Rational {
  const step = powerOfTen(-decimals);
  const scaled = value.div(step);
  return step.mul(roundInteger(numerator(scaled), scaled.d, mode));
}

/** The power of ten of the first significant digit: 2 for 115, -3 for 0.004. Zero has 0. */
export function magnitude(value: Rational): number {
  if (value.n === 0n) return 0;
  const estimate = value.n.toString().length - value.d.toString().length;
  return value.abs().compare(powerOfTen(estimate)) < 0 ? estimate - 1 : estimate;
}

/** The largest relative error that rounding to these decimals can make in `value`. */
export function relativeRoundingError(value: Rational, decimals: number): Rational {
  return powerOfTen(-decimals).div(2).div(value.abs());
}

/** How many decimals write a value exactly; undefined when none do (1/3). */
export function exactDecimals(value: Rational): number | undefined {
  let rest = value.d;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos += 1;
  for (; rest % 5n === 0n; rest /= 5n) fives += 1;
  return rest === 1n ? Math.max(twos, fives) : undefined;
}

function roundInteger(above: bigint, below: bigint, mode: RoundingMode): Rational {
  const floor = above >= 0n ? above / below : -((-above + below - 1n) / below);
  const rest = above - floor * below;
  if (rest === 0n || mode === 'down') return rational(floor);
  if (mode === 'up') return rational(floor + 1n);
  const twice = rest * 2n;
  const roundsUp = twice > below || (twice === below && floor % 2n !== 0n);
  return rational(roundsUp ? floor + 1n : floor);
}
