/** Readings against limits: bounds, wear to the next service, shims and end play. One unit throughout. */

/** Bounds of a reading; either may be absent. Same unit as the reading. */
export interface Bounds {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

/** A reading judged. `margin` is the distance to the nearer bound, negative outside. */
export interface LimitCheck {
  readonly verdict: 'within' | 'below' | 'above';
  readonly margin: number;
}

/** Readings converted from the other system differ in the last bits; this much of a value is no difference. */
const SAME = 1e-9;

/** Judges a reading against bounds; a reading exactly on a bound is within. */
export function limitCheck(reading: number, bounds: Bounds): LimitCheck {
  const below = bounds.min === undefined ? Number.POSITIVE_INFINITY : reading - bounds.min;
  const above = bounds.max === undefined ? Number.POSITIVE_INFINITY : bounds.max - reading;
  const forgiven = -SAME * Math.max(1, Math.abs(reading));
  const verdict = below < forgiven ? 'below' : above < forgiven ? 'above' : 'within';
  return { verdict, margin: Math.min(below, above) };
}

/**
 * What is known about wear: how much falls for each unit of use (kilometre, hour, service), or an earlier reading with the
 * use since then to work it out from. One unit of use throughout.
 */
export type WearRate = { readonly per: number } | { readonly earlier: number; readonly since: number };

/** How far a wearing part lasts. */
export interface WearForecast {
  readonly per: number;
  readonly left: number;
  /** False where the limit comes before the next service. */
  readonly lastsToService: boolean;
  /** Expected reading at the next service. */
  readonly atService: number;
}

/**
 * Straight-line wear of a part that gets thinner, from its reading now to its limit: how far it lasts and whether that is past the
 * next service. Undefined where no rate can be had (no distance, no wear, or a rate that is not positive).
 */
export function wearToService(
  reading: number,
  limit: number,
  rate: WearRate,
  toService: number,
): WearForecast | undefined {
  const per = 'per' in rate ? rate.per : (rate.earlier - reading) / rate.since;
  if (!(per > 0) || !Number.isFinite(per)) return undefined;
  const left = Math.max(0, (reading - limit) / per);
  return { per, left, lastsToService: left >= toService, atService: reading - per * toService };
}

/** A shim to fit and the clearance it will give. */
export interface ShimChoice {
  /** Thickness worked out for the middle of the tolerance. */
  readonly wanted: number;
  readonly shim: number;
  readonly clearance: number;
  readonly within: boolean;
}

/**
 * Shim for a clearance (valve lash, gear backlash taken as a gap): new = fitted + measured − target, target the
 * middle of the bounds; the nearest of the shims at hand is taken. Undefined without shims.
 */
export function shimFor(
  fitted: number,
  measured: number,
  bounds: { readonly min: number; readonly max: number },
  available: readonly number[],
): ShimChoice | undefined {
  const wanted = fitted + measured - (bounds.min + bounds.max) / 2;
  const shim = [...available].sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted) || a - b)[0];
  if (shim === undefined) return undefined;
  const clearance = fitted + measured - shim;
  return { wanted, shim, clearance, within: limitCheck(clearance, bounds).verdict === 'within' };
}

/**
 * End play set by a shim pack: how much to take out (positive) or put in (negative) to reach the middle of the bounds, and in
 * whole steps of the shims at hand. Preload is end play below zero and is written as negative bounds.
 */
export function endPlay(
  measured: number,
  bounds: { readonly min: number; readonly max: number },
  step?: number,
): { verdict: LimitCheck['verdict']; takeOut: number; steps?: number } {
  const verdict = limitCheck(measured, bounds).verdict;
  const change = measured - (bounds.min + bounds.max) / 2;
  if (verdict === 'within') return { verdict, takeOut: 0 };
  return step === undefined
    ? { verdict, takeOut: change }
    : { verdict, takeOut: Math.round(change / step) * step, steps: Math.round(change / step) };
}
