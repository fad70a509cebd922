/**
 * Bands outside which a value is almost surely a slip of unit or decimal point. Common practice in road
 * vehicles and light machinery, no source: each band is wide on purpose, so that no ordinary book value is
 * ever outside. Limits are in the coherent unit of the kind (N·m, Pa, m³, m, K, s).
 */
import { once } from '../text/once.js';
import type { QuantityKind } from './dimension.js';
import { type Measure, toSI } from './measure.js';
import { type Rational, rational } from './rational.js';

/** What a value is for; more uses, more rows. */
export type QuantityUse =
  | 'any'
  | 'tyre pressure'
  | 'wheel-nut torque'
  | 'drain-plug torque'
  | 'fluid fill'
  | 'battery voltage'
  | 'refrigerant charge';

export interface PlausibleRow {
  readonly kind: QuantityKind;
  readonly use: QuantityUse;
  /** In the words of a message: `the torque of a wheel nut`. */
  readonly phrase: string;
  readonly low: Rational;
  readonly high: Rational;
}

export const plausibleRanges: readonly PlausibleRow[] = [
  row('pressure', 'tyre pressure', 'a tyre pressure', '70000', '1200000'),
  row('torque', 'wheel-nut torque', 'the torque of a wheel nut', '30', '900'),
  row('torque', 'drain-plug torque', 'the torque of a drain plug', '5', '150'),
  row('volume', 'fluid fill', 'a fill of fluid', '0.000005', '0.5'),
  row('voltage', 'battery voltage', 'the voltage of a vehicle battery', '1', '1000'),
  row('mass', 'refrigerant charge', 'a charge of refrigerant', '0.1', '20'),
  row('torque', 'any', 'a torque', '0.05', '5000'),
  row('pressure', 'any', 'a pressure', '-101325', '400000000'),
  row('temperature', 'any', 'a temperature in the shop', '193.15', '1500'),
];

/** The row a measure falls outside of, or undefined when it is plausible or nothing is known of its use. */
export function implausible(measure: Measure, use: QuantityUse = 'any'): PlausibleRow | undefined {
  const known = judgements(measure);
  if (!known.has(use)) known.set(use, judged(measure, use));
  return known.get(use);
}

/** What was found of a measure for each use it was asked for. */
const judgements = once((_measure: Measure) => new Map<QuantityUse, PlausibleRow | undefined>());

function judged(measure: Measure, use: QuantityUse): PlausibleRow | undefined {
  const range = plausibleRanges.find((each) => each.kind === measure.unit.kind && each.use === use);
  if (range === undefined) return use === 'any' ? undefined : implausible(measure);
  const { low, high } = toSI(measure);
  const isOutside = [low, high].some(
    (value) => value !== undefined && (value.compare(range.low) < 0 || value.compare(range.high) > 0),
  );
  return isOutside ? range : undefined;
}

function row(kind: QuantityKind, use: QuantityUse, phrase: string, low: string, high: string): PlausibleRow {
  return { kind, use, phrase, low: rational(low), high: rational(high) };
}
