// Readings: limits in either system, wear, shims, end play.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { endPlay, limitCheck, shimFor, wearToService } from '../../language/src/trade/index.js';

it.each([
  [22, 'within'],
  [21.9, 'below'],
  [22.1, 'within'],
] as const)('%d mm of at least 22.0 mm is %s', (reading, verdict) => {
  expect(limitCheck(reading, { min: 22 }).verdict).toBe(verdict);
});

describe('wear to the next service', () => {
  it('a pad at 6 mm, limit 2 mm, worn 1 mm in 10 000 km lasts 40 000 km', () => {
    const wear = wearToService(6, 2, { earlier: 7, since: 10000 }, 30000);
    expect(wear?.left).toBeCloseTo(40000, 6);
    expect(wear).toMatchObject({ lastsToService: true });
    expect(wear?.atService).toBeCloseTo(3, 9);
    expect(wearToService(4, 2, { per: 0.0001 }, 30000)?.lastsToService).toBe(false);
  });
  it.each([
    [{ earlier: 6, since: 10000 }],
    [{ earlier: 7, since: 0 }],
    [{ per: 0 }],
    [{ earlier: 5, since: 1000 }],
  ])('no rate, no forecast: %o', (rate) => {
    expect(wearToService(6, 2, rate, 30000)).toBeUndefined();
  });
});

describe('shims', () => {
  const shims = [2.4, 2.45, 2.5, 2.55, 2.6, 2.65];
  it('2.50 fitted, 0.30 measured, 0.15 to 0.25 wanted: 2.60', () => {
    const choice = shimFor(2.5, 0.3, { min: 0.15, max: 0.25 }, shims);
    expect(choice).toMatchObject({ shim: 2.6, within: true });
    expect(choice?.clearance).toBeCloseTo(0.2, 9);
  });
  it('says when no shim at hand brings it in', () => {
    expect(shimFor(2.5, 0.6, { min: 0.15, max: 0.25 }, shims)).toMatchObject({ shim: 2.65, within: false });
    expect(shimFor(2.5, 0.3, { min: 0.15, max: 0.25 }, [])).toBeUndefined();
  });
  it('with every thickness at hand the clearance is the middle of the bounds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 300 }), fc.integer({ min: 0, max: 60 }), (fitted, measured) => {
        const all = Array.from({ length: 400 }, (_, i) => i / 100);
        expect(shimFor(fitted / 100, measured / 100, { min: 0.1, max: 0.3 }, all)?.clearance).toBeCloseTo(
          0.2,
          6,
        );
      }),
    );
  });
});

it('end play: too loose takes shims out, too tight puts them in, within leaves them', () => {
  const bounds = { min: 0.05, max: 0.15 };
  expect(endPlay(0.1, bounds)).toEqual({ verdict: 'within', takeOut: 0 });
  expect(endPlay(0.3, bounds, 0.05)).toMatchObject({ verdict: 'above', steps: 4 });
  expect(endPlay(0, bounds, 0.05)).toMatchObject({ verdict: 'below', steps: -2 });
  expect(endPlay(0.3, bounds).takeOut).toBeCloseTo(0.2, 9);
});
