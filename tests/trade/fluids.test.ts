// Fluids: grades by their standards, what may mix, coolant, amounts.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { BRAKE_FLUIDS, ENGINE_OILS, GEAR_OILS } from '../../language/src/trade/grade-tables.js';
import {
  containersToPull,
  coolantFreezePoint,
  coolantMix,
  coolantTopUp,
  type GradeStandard,
  glycolsOf,
  mayMix,
  overfill,
  readGrade,
  suits,
} from '../../language/src/trade/index.js';

describe('grades that are right, in one printed form', () => {
  it.each<[GradeStandard, string, string, string]>([
    ['SAE', '75W-90', 'SAE 75W-90', 'gear oil'],
    ['SAE', '75w90', 'SAE 75W-90', 'gear oil'],
    ['SAE', 'SAE 80W-90', 'SAE 80W-90', 'gear oil'],
    ['SAE', '85W-140', 'SAE 85W-140', 'gear oil'],
    ['SAE', '75W-85', 'SAE 75W-85', 'gear oil'],
    ['SAE', '90', 'SAE 90', 'gear oil'],
    ['SAE', '5W-30', 'SAE 5W-30', 'engine oil'],
    ['SAE', '10W/40', 'SAE 10W-40', 'engine oil'],
    ['SAE', '30', 'SAE 30', 'engine oil'],
    ['API', 'GL5', 'API GL-5', 'gear oil'],
    ['API', 'gl-4/gl-5', 'API GL-4/GL-5', 'gear oil'],
    ['API', 'SP/CK-4', 'API SP/CK-4', 'engine oil'],
    ['API', 'SN Plus', 'API SN PLUS', 'engine oil'],
    ['ACEA', 'C3', 'ACEA C3', 'engine oil'],
    ['ACEA', 'a3/b4', 'ACEA A3/B4', 'engine oil'],
    ['DOT', '4', 'DOT 4', 'glycol brake fluid'],
    ['DOT', '5.1', 'DOT 5.1', 'glycol brake fluid'],
    ['DOT', '4 LV', 'DOT 4 LV', 'glycol brake fluid'],
    ['DOT', '5', 'DOT 5', 'silicone brake fluid'],
    ['ISO', 'VG 46', 'ISO VG 46', 'mineral hydraulic oil'],
    ['ISO', '22241', 'ISO 22241 (AUS 32)', 'urea solution'],
    ['NLGI', '2', 'NLGI 2', 'grease'],
    ['NLGI', '2 GC-LB', 'NLGI 2 GC-LB', 'grease'],
    ['ASTM', 'D3306', 'ASTM D3306', 'coolant'],
    ['refrigerant', 'r134A', 'R-134a', 'refrigerant'],
    ['refrigerant', 'HFO-1234yf', 'R-1234yf', 'refrigerant'],
  ])('%s %s is %s', (standard, text, printed, family) => {
    expect(readGrade(standard, text)).toMatchObject({ ok: true, printed, family });
    expect(readGrade(standard, readGrade(standard, text).printed)).toMatchObject({ ok: true, printed });
  });

  it('a withdrawn category is a remark, not a fault', () => {
    expect(readGrade('API', 'SN/SG')).toMatchObject({
      ok: true,
      withdrawn: 'SG',
      note: expect.stringContaining('no longer licensed'),
    });
    expect(readGrade('API', 'GL-5').note).toBeUndefined();
  });
});

describe('grades that are wrong', () => {
  it.each<[GradeStandard, string, RegExp, string | undefined]>([
    ['SAE', '80-90', /lacks its W/, 'SAE 80W-90'],
    ['SAE', '5-30', /lacks its W/, 'SAE 5W-30'],
    ['SAE', '90W-75', /wrong way round/, 'SAE 75W-90'],
    ['SAE', '90-80W', /wrong way round/, 'SAE 80W-90'],
    ['SAE', '75W-100', /no grade 100; the nearest is 90/, undefined],
    ['SAE', '80W-85W', /two winter grades/, undefined],
    ['SAE', '10W-35', /no grade 35/, undefined],
    ['SAE', '10', /has 10W, no plain 10/, 'SAE 10W'],
    ['SAE', 'thick', /not a viscosity grade/, undefined],
    ['API', 'GL-7', /no category GL-7/, 'API GL-4'],
    ['DOT', '6', /no DOT 6/, undefined],
    ['ISO', 'VG 45', /no VG 45/, 'ISO VG 46'],
    ['NLGI', '9', /000 to 6/, undefined],
    ['ASTM', 'coolant', /ASTM D3306/, undefined],
    ['refrigerant', 'propane mix', /not a vehicle refrigerant/, undefined],
    ['refrigerant', 'R-1234', /not a vehicle refrigerant/, 'R-1234yf'],
  ])('%s %s', (standard, text, message, fix) => {
    const read = readGrade(standard, text);
    expect(read).toMatchObject({ ok: false, problem: expect.stringMatching(message) });
    expect(read.fix).toBe(fix);
    if (fix) expect(readGrade(standard, fix).ok).toBe(true);
  });
});

describe('tables of the standards', () => {
  it.each([
    ['75W', 3.8, -40],
    ['80W', 8.5, -26],
    ['85W', 11, -12],
  ] as const)('J306 %s (chart of February 2019, pmlubrication.com.au)', (grade, minKv100, coldLimitC) => {
    expect(GEAR_OILS.find((r) => r.grade === grade)).toMatchObject({ minKv100, coldLimitC });
  });
  it.each([
    ['90', 13.5, 18.5],
    ['140', 24, 32.5],
  ] as const)('J306 %s (same chart)', (grade, minKv100, maxKv100) => {
    expect(GEAR_OILS.find((r) => r.grade === grade)).toMatchObject({ minKv100, maxKv100 });
  });
  it.each([
    ['30', 9.3, 12.5],
    ['40', 12.5, 16.3],
    ['50', 16.3, 21.9],
    ['16', 6.1, 8.2],
  ] as const)('J300 %s (muxxlube.de, united-oil.com)', (grade, minKv100, maxKv100) => {
    expect(ENGINE_OILS.find((r) => r.grade === grade)).toMatchObject({ minKv100, maxKv100 });
  });
  it.each([
    ['DOT 3', 205, 140],
    ['DOT 4', 230, 155],
    ['DOT 5', 260, 180],
    ['DOT 5.1', 260, 180],
  ] as const)('FMVSS 116 %s (49 CFR 571.116 S5.1)', (code, dryC, wetC) => {
    expect(BRAKE_FLUIDS.find((r) => r.code === code)).toMatchObject({ dryC, wetC });
  });
});

describe('what may mix', () => {
  const dot = (n: string) => readGrade('DOT', n);
  it.each([
    ['4', '5', 'no'],
    ['3', '5', 'no'],
    ['5.1', '5', 'no'],
    ['3', '4', 'yes'],
    ['4', '5.1', 'yes'],
    ['4', '4', 'yes'],
  ])('DOT %s with DOT %s: %s (FMVSS 116; adelaideoil.com, sbwire.com)', (a, b, answer) => {
    expect(mayMix(dot(a), dot(b)).answer).toBe(answer);
    expect(mayMix(dot(b), dot(a)).answer).toBe(answer);
  });

  it('DOT 5 into a DOT 4 system is an error, DOT 3 too, DOT 5.1 is not', () => {
    expect(suits(dot('4'), dot('5'))).toMatchObject({
      answer: 'no',
      reason: expect.stringContaining('silicone'),
    });
    expect(suits(dot('4'), dot('3'))).toMatchObject({
      answer: 'no',
      reason: expect.stringContaining('140 °C wet'),
    });
    expect(suits(dot('4'), dot('5.1')).answer).toBe('yes');
    expect(suits(dot('4 LV'), dot('3')).answer).toBe('no');
  });

  it('GL-5 into a GL-4 gearbox is asked about (machinerylubrication.com)', () => {
    const [gl4, gl5, both] = ['GL-4', 'GL-5', 'GL-4/GL-5'].map((t) => readGrade('API', t));
    if (!gl4 || !gl5 || !both) throw new Error('three grades');
    expect(suits(gl4, gl5)).toMatchObject({ answer: 'ask', reason: expect.stringContaining('copper') });
    expect(suits(both, gl5).reason).not.toContain('copper');
  });

  it('two refrigerants never, two coolant types are asked about, oil with coolant never', () => {
    expect(mayMix(readGrade('refrigerant', 'R-134a'), readGrade('refrigerant', 'R-1234yf')).answer).toBe(
      'no',
    );
    expect(mayMix(readGrade('ASTM', 'D3306'), readGrade('ASTM', 'D6210')).answer).toBe('ask');
    expect(mayMix(readGrade('SAE', '5W-30'), readGrade('ASTM', 'D3306')).answer).toBe('no');
  });
});

describe('coolant', () => {
  // CoolProp 8.0.0 run once, INCOMP::APG (ASHRAE propylene glycol by volume): an independent library.
  it.each([
    [10, -3.43],
    [20, -7.38],
    [30, -13.11],
    [40, -21.51],
    [50, -33.66],
  ])('propylene %d %% freezes near %d °C (CoolProp)', (percent, celsius) => {
    expect(Math.abs((coolantFreezePoint('propylene', percent)?.celsius ?? 0) - celsius)).toBeLessThan(1.3);
  });
  it.each([
    [30, -12.8],
    [35, -16.1],
    [50, -33.3],
  ])('propylene %d %% freezes at %d °C (Lange table 5.13)', (percent, celsius) => {
    expect(coolantFreezePoint('propylene', percent)?.celsius).toBeCloseTo(celsius, 6);
  });
  it.each([
    [33, -18, 'label value, from memory'],
    [40, -24, 'label value, from memory'],
    [50, -37, 'cyfreeze.com'],
    [60, -52, 'label value, from memory'],
  ])('ethylene %d %% freezes near %d °C (%s)', (percent, celsius) => {
    expect(Math.abs((coolantFreezePoint('ethylene', percent)?.celsius ?? 0) - celsius)).toBeLessThan(1);
  });
  // By mass the published points are 35 % −18.8, 40 % −23.8, 60 % −51.2 °C (processconvert.com); density 1.113 turns them to volume.
  it.each([
    [35, -18.8],
    [40, -23.8],
  ])('ethylene %d %% by mass freezes near %d °C', (mass, celsius) => {
    const volume = (100 * (mass / 1.113)) / (mass / 1.113 + (100 - mass) / 0.998);
    expect(Math.abs((coolantFreezePoint('ethylene', volume)?.celsius ?? 0) - celsius)).toBeLessThan(2);
  });
  it('says nothing outside its tables', () => {
    expect(coolantFreezePoint('ethylene', 75)).toBeUndefined();
    expect(coolantFreezePoint('propylene', -1)).toBeUndefined();
  });
  it('8 L from 30 % to 50 % takes 2.286 L of concentrate (computed from the balance)', () => {
    const topUp = coolantTopUp(8, 0.3, 0.5);
    expect(topUp?.refillWith).toBe('concentrate');
    expect(topUp?.drain).toBeCloseTo(2.2857, 4);
    expect(coolantTopUp(8, 1, 0.5)).toEqual({ drain: 4, refillWith: 'water' });
    expect(coolantTopUp(8, 0.5, 1.5)).toBeUndefined();
  });
  it('drain and replace gives the share wanted', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(share, share, (from, to) => {
        const topUp = coolantTopUp(8, from, to);
        const added = topUp?.refillWith === 'concentrate' ? (topUp?.drain ?? 0) : 0;
        expect(((8 - (topUp?.drain ?? 0)) * from + added) / 8).toBeCloseTo(to, 9);
      }),
    );
  });
  it.each([
    ['ASTM D3306', ['ethylene', 'propylene']],
    ['ASTM D3306 type I', ['ethylene']],
    ['ASTM D3306 type II', ['propylene']],
    ['ASTM D3306 type III', ['ethylene']],
    ['ASTM D3306 type IV', ['propylene']],
  ])('%s is of %j (ASTM D3306)', (grade, glycols) => {
    expect(glycolsOf(grade)).toEqual(glycols);
  });
  it('mixes a fresh fill', () => {
    expect(coolantMix(6, 0.5)).toEqual({ concentrate: 3, water: 3 });
  });
});

describe('one fluid named by two standards', () => {
  it('agrees where both mean one family, and not where they do not', () => {
    expect(mayMix(readGrade('SAE', '85W-140'), readGrade('API', 'GL-5')).answer).toBe('yes');
    expect(mayMix(readGrade('SAE', '5W-30'), readGrade('ACEA', 'C3')).answer).toBe('yes');
    expect(mayMix(readGrade('SAE', '5W-30'), readGrade('API', 'GL-5')).answer).toBe('no');
  });
});

test('urea solution tells what a refractometer must read (ISO 22241-1; ccicsg.com limit table)', () => {
  expect(readGrade('ISO', '22241').note).toBe(
    '31.8 to 33.2 % urea by mass, refractive index 1.3814 to 1.3843 at 20 °C',
  );
});

describe('amounts', () => {
  it('2.1 L of a 1.9 L fill is reported, 2 US qt of 1.9 L is not', () => {
    expect(overfill(2.1, 1.9)?.excessL).toBeCloseTo(0.2, 9);
    expect(overfill(2 * 0.946352946, 1.9)).toBeUndefined();
    expect(overfill(1.9, 1.9)).toBeUndefined();
  });
  it.each([
    [0.35, 0.5, 1],
    [1.5, 0.5, 3],
    [6.7, 1, 7],
    [17 * 0.473176473, 0.946352946, 9],
    [0, 1, 0],
  ])('%d L in bottles of %d L: %d', (amount, bottle, count) => {
    expect(containersToPull(amount, bottle)?.count).toBe(count);
  });
});
