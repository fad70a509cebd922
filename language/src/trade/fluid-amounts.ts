/** Amounts of fluids and supplies: overfill, containers to pull, and where what is drained goes. */
import type { PhraseId } from '../vocabulary/phrases/table.js';
import type { FluidFamily } from './grade-reading.js';

/**
 * A fill larger than the system holds (litres): 2.1 L of a 1.9 L fill. Amounts written in other units differ in the
 * last digit, so half a percent is forgiven. Undefined when it fits.
 */
export function overfill(fillL: number, capacityL: number): { excessL: number; share: number } | undefined {
  const excessL = fillL - capacityL;
  return excessL > capacityL * 0.005 ? { excessL, share: excessL / capacityL } : undefined;
}

/** Whole containers to pull for an amount, both in litres (or both in any one unit), and what is left over. */
export function containersToPull(
  amount: number,
  container: number,
): { count: number; leftOver: number } | undefined {
  if (!(amount >= 0) || !(container > 0)) return undefined;
  // Three half-litre bottles hold 1.5 L even when 1.5 came out of a conversion.
  const count = Math.max(0, Math.ceil(amount / container - 1e-6));
  return { count, leftOver: Math.max(0, count * container - amount) };
}

/** The waste that a shop collects apart for each fluid (common practice; local rules come first), by the name of its phrase. */
export const WASTE_STREAMS = {
  'engine oil': 'used-oil',
  'gear oil': 'used-oil',
  'mineral hydraulic oil': 'used-oil',
  grease: 'oily-waste',
  'glycol brake fluid': 'waste-brake-fluid',
  'silicone brake fluid': 'waste-brake-fluid',
  coolant: 'waste-coolant',
  refrigerant: 'recovered-refrigerant',
  'urea solution': 'waste-urea',
  fuel: 'waste-fuel',
} as const satisfies Record<FluidFamily, PhraseId>;
