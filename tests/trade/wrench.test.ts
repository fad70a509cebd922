// Torque tools: which to take, what to dial with an adapter, which drive.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseWrench, crowfootSetting, drive } from '../../language/src/trade/index.js';
import { FT_LBF } from './support.js';

const house = [
  { name: 'small', lowNm: 2, highNm: 25 },
  { name: 'medium', lowNm: 20, highNm: 100 },
  { name: 'large', lowNm: 60, highNm: 300 },
];

describe('the wrench to take (20–100 % of the top value, ISO 6789)', () => {
  it.each([
    [8, 'small', 'good'],
    [20, 'small', 'good'],
    [25, 'small', 'good'],
    [26, 'medium', 'good'],
    [100, 'medium', 'good'],
    [115, 'large', 'good'],
    [60, 'medium', 'good'],
    [300, 'large', 'good'],
    [3, 'small', 'low end'],
  ] as const)('%d N·m: %s, %s', (torqueNm, name, fit) => {
    expect(chooseWrench(torqueNm, house)).toMatchObject({ tool: { name }, fit });
  });

  it.each([1, 301, 1000])('%d N·m: none', (torqueNm) => {
    expect(chooseWrench(torqueNm, house)).toMatchObject({ tool: undefined, fit: 'none', usable: [] });
  });

  it('a range converted from foot-pounds still holds its own ends', () => {
    const tool = { name: 'foot', lowNm: 20 * FT_LBF, highNm: 150 * FT_LBF };
    expect(chooseWrench(150 * FT_LBF, [tool]).tool).toBe(tool);
    expect(chooseWrench(30 * FT_LBF, [tool]).fit).toBe('good');
    expect(chooseWrench(20 * FT_LBF, [tool]).fit).toBe('low end');
  });

  it.each([
    [10, 0.06],
    [11, 0.04],
  ])('deviation at %d N·m is ±%d (ISO 6789, type II class A, manuzoid.com)', (torqueNm, share) => {
    expect(chooseWrench(torqueNm, house).toleranceShare).toBe(share);
  });
});

describe('what to dial with an adapter', () => {
  it.each([
    [100, 12 * 25.4, 6 * 25.4, 0, 66.7, 'NAVEDTRA 14315, in inch units: 100 in·lb'],
    [100, 400, 50, 0, 88.9, 'computed: 100·400/450'],
    [100, 400, 50, 90, 100, 'NAVEDTRA 14315: no correction square to the handle'],
    [100, 400, 50, 180, 114.3, 'computed: 100·400/350, pointing back'],
    [100, 400, 0, 0, 100, 'no extension'],
  ])('%d with L %d, E %d at %d° is %d (%s)', (torqueNm, lever, extension, angle, setting) => {
    const found = crowfootSetting(torqueNm, lever, extension, angle);
    expect('settingNm' in found && found.settingNm).toBeCloseTo(setting, 1);
  });

  it('dialling the setting gives the torque back: S·(L + E)/L', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 100, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        (t, l, e) => {
          const found = crowfootSetting(t, l, e);
          expect('settingNm' in found && (found.settingNm * (l + e)) / l).toBeCloseTo(t, 6);
        },
      ),
    );
  });

  it.each([
    [0, 50, 0],
    [100, 100, 180],
  ])('L %d, E %d at %d° cannot be dialled', (lever, extension, angle) => {
    expect(crowfootSetting(100, lever, extension, angle)).toHaveProperty('problem');
  });
});

it.each([
  [6, '1/4'],
  [20, '1/4'],
  [48, '3/8'],
  [115, '1/2'],
  [245, '1/2'],
  [600, '3/4'],
  [1500, '1'],
])('%d N·m suits a %s in drive (common practice)', (torqueNm, inch) => {
  expect(drive(torqueNm).inch).toBe(inch);
});
