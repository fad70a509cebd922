// The joint check: ordinary book values are silent, a factor of twelve either way is not.
import { describe, expect, it } from 'vitest';
import {
  angleStretch,
  checkJoint,
  checkUnclassed,
  type JointInput,
  lubricantOnDrySpec,
  nutFactor,
  strength,
  usualStages,
} from '../../language/src/trade/index.js';
import { cls, FT_LBF, IN_LBF, LBF, thr } from './support.js';

const check = (thread: string, code: string, torqueNm: number, more: Partial<JointInput> = {}) =>
  checkJoint({ thread: thr(thread), class: cls(code), torqueNm, ...more });

/** T = 0.20·d·0.75·proof, N·m, by class 4.6, 5.8, 8.8, 10.9, 12.9: computed from ISO 898-1 and Shigley eq. 8-31. */
const CHART: readonly (readonly [string, ...number[]])[] = [
  ['M5', 2.4, 4, 6.2, 8.8, 10.3],
  ['M6', 4.1, 6.9, 10.5, 15, 17.6],
  ['M8', 9.9, 16.7, 25.5, 36.5, 42.6],
  ['M10', 19.6, 33.1, 50.5, 72.2, 84.4],
  ['M12', 34.1, 57.6, 88, 126, 147],
  ['M14', 54.5, 92.1, 141, 201, 235],
  ['M16', 84.6, 143, 218, 312, 365],
  ['M18', 117, 198, 312, 431, 504],
  ['M20', 165, 279, 441, 610, 712],
  ['M22', 225, 381, 601, 831, 971],
  ['M24', 286, 482, 761, 1053, 1231],
];
const CLASSES = ['4.6', '5.8', '8.8', '10.9', '12.9'];
/** The same in ft·lbf for grades 2, 5, 8; the grade 2 column is the chart of coxhardware.com. */
const INCH_CHART: readonly (readonly [string, number, number, number])[] = [
  ['1/4-20', 5.5, 8.5, 11.9],
  ['5/16-18', 11.5, 17.4, 24.6],
  ['3/8-16', 20, 30.9, 43.6],
  ['7/16-14', 32, 49.4, 69.8],
  ['1/2-13', 48.8, 75.4, 106],
  ['9/16-12', 70.4, 109, 154],
  ['5/8-11', 97.1, 150, 212],
  ['3/4-10', 172, 266, 376],
  ['7/8-9', 167, 429, 606],
  ['1-8', 250, 644, 909],
];

describe('a chart of 75 % of proof at K 0.2', () => {
  const rows = [
    ...CHART.flatMap(([size, ...torques]) => torques.map((t, i) => [size, CLASSES[i] ?? '', t] as const)),
    ...INCH_CHART.flatMap(([size, ...torques]) =>
      torques.map((t, i) => [size, `grade ${['2', '5', '8'][i]}`, t * FT_LBF] as const),
    ),
  ];
  it.each(rows)(
    '%s %s at %d N·m is silent, a twelfth is asked about, twelve times is an error',
    (size, code, torqueNm) => {
      const joint = check(size, code, torqueNm);
      expect(joint?.verdict).toBe('silent');
      expect(joint?.shareOfProof).toBeCloseTo(0.75, 1);
      expect(Math.abs((joint?.chartTorqueNm ?? 0) / torqueNm - 1)).toBeLessThan(0.03);
      expect(check(size, code, torqueNm / 12)?.verdict).toBe('low');
      expect(check(size, code, torqueNm * 12)?.verdict).toBe('yields');
      expect(check(size, code, torqueNm * 12, { writtenUnit: 'ft·lbf' })).toMatchObject({
        verdict: 'inch-foot-exchanged',
        meantUnit: 'in·lbf',
      });
      expect(check(size, code, torqueNm / 12, { writtenUnit: 'in·lbf' })).toMatchObject({
        verdict: 'low',
        meantUnit: 'ft·lbf',
      });
    },
  );

  it.each(rows)('%s %s at %d N·m stays silent oiled and with threadlocker', (size, code, torqueNm) => {
    expect(check(size, code, torqueNm, { lubrication: 'oiled' })?.verdict).toBe('silent');
    expect(check(size, code, torqueNm, { lubrication: 'threadlocker' })?.verdict).toBe('silent');
  });
});

describe('makers’ tables to 90 % of yield are silent (VDI 2230, µ 0.12, N·m; mastik.pt p. 685, stainless p. 686)', () => {
  it.each<[string, number, number, number]>([
    ['M8x1', 26.1, 38.3, 44.9],
    ['M10x1.25', 51, 75, 87],
    ['M12x1.25', 90, 133, 155],
    ['M16x1.5', 218, 320, 374],
    ['M18x1.5', 327, 465, 544],
    ['M20x1.5', 454, 646, 756],
    ['M24x2', 769, 1095, 1282],
  ])('%s', (size, ...torques) => {
    for (const [i, t] of torques.entries())
      expect(check(size, ['8.8', '10.9', '12.9'][i] ?? '', t)?.verdict).toBe('silent');
  });
  it.each([
    ['M6', 10],
    ['M8', 24.1],
    ['M10', 47.7],
    ['M20', 401],
    ['M24', 690],
  ] as const)('%s A2-70', (size, t) => {
    expect(check(size, 'A2-70', t)?.verdict).toBe('silent');
  });
});

describe('the figures of worked examples', () => {
  it('M6 8.8 at 80 ft·lbf would yield and is silent at 80 in·lbf', () => {
    expect(check('M6', '8.8', 80 * FT_LBF, { writtenUnit: 'ft·lbf' })).toMatchObject({
      verdict: 'inch-foot-exchanged',
      meantUnit: 'in·lbf',
      suggestion: expect.stringContaining('in·lbf'),
    });
    expect(check('M6', '8.8', 80 * IN_LBF, { writtenUnit: 'in·lbf' })?.verdict).toBe('silent');
  });

  it('M14x1.5 wheel nuts at 118 ft·lbf are silent, whatever the stud', () => {
    for (const code of ['8.8', '10.9', 'class 10'])
      expect(check('M14x1.5', code, 118 * FT_LBF)?.verdict).toBe('silent');
  });

  it('Shigley ex. 8-3: 3/4-16 grade 5 to 25 kip at K 0.2 takes 3750 lbf·in', () => {
    const joint = check('3/4-16', 'grade 5', 3750 * IN_LBF);
    expect((joint?.preloadN ?? 0) / LBF).toBeCloseTo(25000, 0);
    expect((joint?.preloadN ?? 0) / LBF / 0.373 / 1000).toBeCloseTo(67.02, 1);
  });

  it.each([
    [0.3, 72.7],
    [0.25, 60.6],
    [0.2, 48.5],
    [0.15, 36.3],
    [0.1, 24.2],
  ])('Speck p. 85: #10 at 1275 lbf, K %d: %d in·lbf', (k, inlbf) => {
    // The check divides by its own K; scaling back to the book's K must give the book's force.
    const joint = checkJoint({ thread: thr('#10-32'), class: cls('8.8'), torqueNm: inlbf * IN_LBF });
    expect(((joint?.preloadN ?? 0) * ((joint?.kNominal ?? 0) / k)) / LBF).toBeCloseTo(1275, -1);
  });

  it('vibromera.eu: M12 8.8 has a proof load of 48 894 N', () => {
    expect(Math.abs((check('M12', '8.8', 80)?.proofLoadN ?? 0) / 48894 - 1)).toBeLessThan(0.001);
  });

  it('AN6 example: cadmium dry at 28.9 ft·lbf gives 5788 lbf (mechanicsupport.com)', () => {
    const joint = check('3/8-24', 'grade 8', 28.9 * FT_LBF, { finish: 'cadmium' });
    expect((joint?.preloadN ?? 0) / LBF).toBeCloseTo(5788, -2);
  });

  it.each([
    ['1/4-28', 50, 70],
    ['5/16-24', 100, 140],
    ['3/8-24', 160, 190],
    ['1/2-20', 480, 690],
    ['5/8-18', 1100, 1300],
    ['3/4-16', 2300, 2500],
  ] as const)(
    'AC 43.13-1B table 7-1, %s at %d to %d in·lbf is silent on a grade 8 bolt',
    (size, low, high) => {
      expect(check(size, 'grade 8', low * IN_LBF)?.verdict).toBe('silent');
      expect(check(size, 'grade 8', high * IN_LBF)?.verdict).toBe('silent');
    },
  );
});

describe('what a check adds and leaves alone', () => {
  it('says nothing where the books say nothing', () => {
    expect(check('M12x1.6', '8.8', 500)).toBeUndefined();
    expect(check('G1/4', '8.8', 500)).toBeUndefined();
    expect(check('M8', 'class 04', 500)).toBeUndefined();
    expect(check('M8', '8.8', 0)).toBeUndefined();
  });

  it('shows the range of K and never judges by it', () => {
    const joint = check('M10', '8.8', 60);
    expect(joint?.verdict).toBe('silent');
    expect(joint?.kRange).toEqual([0.15, 0.3]);
    expect((joint?.preloadRangeN[1] ?? 0) / (joint?.yieldLoadN ?? 1)).toBeGreaterThan(1);
    expect(joint?.sources).toContain('ISO 898-1, bolts and screws');
  });

  it('adds prevailing torque to the setting, not to the preload (AC 43.13-1B)', () => {
    const [plain, locking] = [check('M10', '8.8', 50), check('M10', '8.8', 50, { prevailingNm: 4 })];
    expect(locking?.settingNm).toBe(54);
    expect(locking?.preloadN).toBe(plain?.preloadN);
  });

  it('scales a dry torque for a lubricated thread: anti-seize takes 0.60 of it (Bowman K 0.12 over 0.20, Shigley table 8-15)', () => {
    const scaled = lubricantOnDrySpec(100, 'anti-seize');
    expect(scaled.factor).toBeCloseTo(0.6, 10);
    expect(scaled.torqueNm).toBeCloseTo(60, 10);
  });

  it.each<[Parameters<typeof nutFactor>[0], number, string]>([
    [{ finish: 'black' }, 0.3, 'Shigley table 8-15'],
    [{ finish: 'zinc' }, 0.2, 'Shigley table 8-15'],
    [{ finish: 'cadmium' }, 0.16, 'Shigley table 8-15'],
    [{ lubrication: 'threadlocker' }, 0.18, 'Shigley table 8-15, lubricated'],
    [{ lubrication: 'anti-seize' }, 0.12, 'Shigley table 8-15'],
    [{ lubrication: 'oiled' }, 0.15, 'Mott'],
    [{ lubrication: 'oiled', finish: 'black' }, 0.15, 'Mott: the oil decides'],
    [{}, 0.2, 'Bowman, unknown condition'],
  ])('K for %o is %d (%s)', (condition, k) => {
    expect(nutFactor(condition).nominal).toBe(k);
  });
});

describe('torque, then angle', () => {
  const bolt = { thread: thr('M12x1.5'), class: cls('10.9'), torqueNm: 60, gripMm: 60 };

  it('stretches the bolt by its share of the advance: 1.5 mm · 90/360 · 0.65', () => {
    const turned = angleStretch({ ...bolt, angleDeg: 90 });
    expect(turned?.elongationMm).toBeCloseTo(0.24375, 5);
    expect(turned?.addedPreloadN).toBeCloseTo((205000 * (bolt.thread.stressAreaMm2 ?? 0) * 0.24375) / 60, 3);
    expect(turned?.snugPreloadN).toBeCloseTo(25000, 6);
  });

  it('holds the preload at yield where the turn goes past it, and says so', () => {
    const turned = angleStretch({ ...bolt, angleDeg: 180 });
    expect(turned?.pastYield).toBe(true);
    expect(turned?.preloadN).toBeCloseTo(
      (strength(bolt.class, bolt.thread)?.yieldMPa ?? 0) * (bolt.thread.stressAreaMm2 ?? 0),
      3,
    );
    expect(angleStretch({ ...bolt, angleDeg: 30, gripMm: 120 })?.pastYield).toBe(false);
  });

  it('says nothing without a grip length', () => {
    expect(angleStretch({ ...bolt, angleDeg: 90, gripMm: 0 })).toBeUndefined();
  });
});

describe('usual passes', () => {
  it('are 30/60/100 for 4 and 8 bolts, 20/40/80/100 from 12 (piping-designer.com on PCC-1)', () => {
    expect(usualStages(8)?.percent).toEqual([30, 60, 100]);
    expect(usualStages(12)?.percent).toEqual([20, 40, 80, 100]);
  });
});

describe('a bolt without a class', () => {
  it.each([
    ['M14x1.5', 160, 'wheel', undefined],
    ['M14x1.5', 160 / 12, 'wheel', 'low'],
    ['M14x1.5', 160 * 12, 'wheel', 'yields'],
    ['M12x1.5', 100, 'wheel', undefined],
    ['1/2-20', 100 * FT_LBF, 'wheel', undefined],
    ['M18x1.5', 40, undefined, undefined],
    ['M24x1.5', 245, undefined, undefined],
    ['M6', 80 * FT_LBF, undefined, 'yields'],
  ] as const)('%s at %d N·m (%s)', (size, torqueNm, use, verdict) => {
    expect(checkUnclassed(thr(size), torqueNm, use)?.verdict).toBe(verdict);
  });
});

describe('house values of an invented depot are silent', () => {
  it.each([
    ['M6', '8.8', 6],
    ['M6', '8.8', 3],
    ['M8', '8.8', 18],
    ['M8', 'class 8', 22],
    ['M10', '8.8', 46],
    ['M10', 'class 8', 48],
    ['M10', '10.9', 55],
    ['M12x1.5', '10.9', 115],
    ['M12x1.5', '10.9', 60],
    ['M14x1.5', '10.9', 165],
    ['7/16-14', 'grade 5', 40 * FT_LBF],
    ['1/4-20', 'grade 5', 85 * IN_LBF],
  ] as const)('%s %s at %d N·m', (size, code, torqueNm) => {
    expect(check(size, code, torqueNm)?.verdict).toBe('silent');
  });
});
