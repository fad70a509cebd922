/** Urea solution for exhaust treatment (ISO 22241, AUS 32): what a refractometer reading says. */
import { sourceTitle } from './sources.js';

/** Urea by mass, %, and refractive index at 20 °C, lowest and highest. */
export const AUS32 = {
  percent: { from: 31.8, to: 33.2 },
  refractiveIndex: { from: 1.3814, to: 1.3843 },
} as const;

/** Judges a urea share (% by mass) or a refractive index at 20 °C against ISO 22241-1. */
export function ureaCheck(reading: { readonly percent: number } | { readonly refractiveIndex: number }): {
  verdict: 'within' | 'weak' | 'strong';
  source: string;
} {
  const [value, limits] =
    'percent' in reading
      ? [reading.percent, AUS32.percent]
      : [reading.refractiveIndex, AUS32.refractiveIndex];
  const verdict = value < limits.from ? 'weak' : value > limits.to ? 'strong' : 'within';
  return { verdict, source: sourceTitle('ISO22241') };
}
