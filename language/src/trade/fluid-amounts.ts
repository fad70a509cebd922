/** Amounts of fluids and supplies: overfill, waste, and containers to pull. */
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

/** Waste streams a shop keeps apart (common practice; local rules come first). */
export const WASTE_STREAMS: Readonly<Record<FluidFamily, string>> = {
  'engine oil': 'used oil',
  'gear oil': 'used oil',
  'mineral hydraulic oil': 'used oil',
  grease: 'oily waste',
  'glycol brake fluid': 'brake fluid',
  'silicone brake fluid': 'brake fluid',
  coolant: 'coolant',
  refrigerant: 'recovered refrigerant',
  'urea solution': 'urea solution',
  fuel: 'fuel',
};

/** One drain: the fluid's family and how much comes out, litres; `undefined` where the amount is not known. */
export interface Drain {
  readonly family: FluidFamily;
  readonly amountL: number | undefined;
}

/** Drained waste by stream, litres, with a mark where a drain's amount is not known. */
export function drainedWaste(
  drains: readonly Drain[],
): readonly { stream: string; amountL: number; atLeast: boolean }[] {
  const streams = new Map<string, { amountL: number; atLeast: boolean }>();
  for (const drain of drains) {
    const stream = WASTE_STREAMS[drain.family];
    const sum = streams.get(stream) ?? { amountL: 0, atLeast: false };
    streams.set(stream, {
      amountL: sum.amountL + (drain.amountL ?? 0),
      atLeast: sum.atLeast || drain.amountL === undefined,
    });
  }
  return [...streams].map(([stream, sum]) => ({ stream, ...sum }));
}
