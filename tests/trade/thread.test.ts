// Threads: stress areas against published tables, and the ways a workshop writes a designation.
import { describe, expect, it } from 'vitest';
import { readThread } from '../../language/src/trade/index.js';
import { thr } from './support.js';

const MM2_PER_IN2 = 645.16;

/** Published stress areas. Metric in mm², unified in in². The source stands in each row. */
const AREAS: readonly [thread: string, area: number, source: string][] = [
  ['M3', 5.03, 'ISO 898-1 table, optimas.com'],
  ['M3.5', 6.78, 'ISO 898-1 table, optimas.com'],
  ['M4', 8.78, 'ISO 898-1 table, optimas.com'],
  ['M5', 14.2, 'ISO 898-1 table, usefastener.com'],
  ['M6', 20.1, 'ISO 898-1 table, usefastener.com'],
  ['M7', 28.9, 'ISO 898-1 table, usefastener.com'],
  ['M8', 36.6, 'ISO 898-1 table, usefastener.com'],
  ['M10', 58, 'ISO 898-1 table, usefastener.com'],
  ['M12', 84.3, 'ISO 898-1 table, usefastener.com'],
  ['M14', 115, 'ISO 898-1 table, usefastener.com'],
  ['M16', 157, 'ISO 898-1 table, usefastener.com'],
  ['M18', 192, 'ISO 898-1 table, usefastener.com'],
  ['M20', 245, 'ISO 898-1 table, usefastener.com'],
  ['M22', 303, 'ISO 898-1 table, usefastener.com'],
  ['M24', 353, 'ISO 898-1 table, usefastener.com'],
  ['M27', 459, 'ISO 898-1 table, usefastener.com'],
  ['M30', 561, 'ISO 898-1 table, usefastener.com'],
  ['M14x2', 115.44, 'Bickford table, engineersedge.com'],
  ['M20x2.5', 244.79, 'Bickford table, engineersedge.com'],
  ['M12x1.5', 88.13, 'GB/T 16823.1 table, china-reducers.com'],
  ['M12x1.25', 92.07, 'GB/T 16823.1 table, china-reducers.com'],
  ['M12x1', 96.1, 'GB/T 16823.1 table, china-reducers.com'],
  ['M14x1.5', 124.55, 'GB/T 16823.1 table, china-reducers.com'],
  ['M16x1.5', 167.25, 'GB/T 16823.1 table, china-reducers.com'],
  ['M18x2', 204.18, 'GB/T 16823.1 table, china-reducers.com'],
  ['M18x1.5', 216.24, 'GB/T 16823.1 table, china-reducers.com'],
  ['#8-32', 0.014, 'ASME B1.1 table, formulafactory.tools'],
  ['#8-36', 0.01474, 'ASME B1.1 table, boltport.com'],
  ['#10-24', 0.0175, 'ASME B1.1 table, formulafactory.tools'],
  ['#10-32', 0.02, 'ASME B1.1 table, boltport.com'],
  ['#12-28', 0.0258, 'ASME B1.1 table, boltport.com'],
  ['1/4-20', 0.0318, 'Shigley table 8-2'],
  ['1/4-28', 0.0364, 'Shigley table 8-2'],
  ['5/16-18', 0.0524, 'Shigley table 8-2'],
  ['5/16-24', 0.058, 'Shigley table 8-2'],
  ['3/8-16', 0.0775, 'Shigley table 8-2'],
  ['3/8-24', 0.0878, 'Shigley table 8-2'],
  ['7/16-14', 0.1063, 'Shigley table 8-2'],
  ['7/16-20', 0.1187, 'Shigley table 8-2'],
  ['1/2-13', 0.1419, 'Shigley table 8-2'],
  ['1/2-20', 0.1599, 'Shigley table 8-2'],
  ['9/16-12', 0.182, 'Shigley table 8-2'],
  ['9/16-18', 0.203, 'boltport.com'],
  ['5/8-11', 0.226, 'Shigley table 8-2'],
  ['5/8-18', 0.256, 'Shigley table 8-2'],
  ['3/4-10', 0.334, 'Shigley table 8-2'],
  ['3/4-16', 0.373, 'Shigley table 8-2'],
  ['7/8-9', 0.462, 'Shigley table 8-2'],
  ['7/8-14', 0.509, 'Shigley table 8-2'],
  ['1-8', 0.606, 'Shigley table 8-2'],
  ['1-12', 0.663, 'Shigley table 8-2'],
];

describe('stress areas agree with the printed tables to three digits', () => {
  it.each(AREAS)('%s: %d (%s)', (text, area) => {
    const thread = thr(text);
    const unit = thread.system === 'unified' ? MM2_PER_IN2 : 1;
    expect(Math.abs((thread.stressAreaMm2 ?? 0) / unit / area - 1)).toBeLessThan(0.005);
  });
});

describe('ISO 262 pairs are known (liquisearch.com copy of the table)', () => {
  const fine: Record<number, number[]> = {
    8: [1.25, 1],
    10: [1.5, 1.25, 1],
    12: [1.75, 1.5, 1.25],
    14: [2, 1.5],
    16: [2, 1.5],
    18: [2.5, 2, 1.5],
    20: [2.5, 2, 1.5],
    22: [2.5, 2, 1.5],
    24: [3, 2],
    27: [3, 2],
    30: [3.5, 2],
  };
  it.each(Object.entries(fine))('M%s', (d, pitches) => {
    for (const p of pitches) expect(thr(`M${d}x${p}`).known).toBe(true);
    expect(thr(`M${d}`).pitchMm).toBe(pitches[0]);
  });
});

describe('a designation is read as workshops write it', () => {
  it.each([
    ['M12x1.75', 'M12×1.75'],
    ['m12 x 1.75', 'M12×1.75'],
    ['M12×1,75', 'M12×1.75'],
    ['M12-1.75', 'M12×1.75'],
    ['M12', 'M12×1.75'],
    ['M6x1', 'M6×1.0'],
    ['M14x1.5-6g', 'M14×1.5'],
    ['M12x1.25 LH', 'M12×1.25-LH'],
    ['1/2-13 UNC', '1/2-13 UNC'],
    ['1/2"-13 UNC-2A', '1/2-13 UNC'],
    ['1/2 UNF', '1/2-20 UNF'],
    ['#10-32 UNF', '#10-32 UNF'],
    ['No. 10-32', '#10-32 UNF'],
    ['10-24', '#10-24 UNC'],
    ['1-8', '1-8 UNC'],
    ['1-14', '1-14 UNS'],
    ['1-14 UNS', '1-14 UNS'],
    ['1 1/8-7 UNC', '1-1/8-7 UNC'],
    ['.250-20', '1/4-20 UNC'],
    ['1/4-18 NPT', '1/4-18 NPT'],
    ['1/4 NPT', '1/4-18 NPT'],
    ['3/4-14 NPT', '3/4-14 NPT'],
    ['1-11.5 NPT', '1-11.5 NPT'],
    ['G1/4', 'G1/4'],
    ['G 1/2', 'G1/2'],
    ['Rc1/8', 'Rc1/8'],
    ['1/4 BSPP', 'G1/4'],
  ])('%s is %s', (text, printed) => {
    const thread = thr(text);
    expect(thread.designation).toBe(printed);
    expect(thread.known).toBe(true);
    expect(thr(thread.written).designation).toBe(printed);
  });

  it.each([
    ['1/4-18 NPT', 13.716, 25.4 / 18, 'ASME B1.20.1 outside diameter 0.540 in, avantorsciences.com'],
    ['G1/4', 13.157, 1.337, 'ISO 7-1 table, Mechanical Engineer’s Pocket Book'],
    ['G3/8', 16.662, 1.337, 'ISO 7-1 table, Mechanical Engineer’s Pocket Book'],
  ])('%s measures %d mm (%s)', (text, diameterMm, pitchMm) => {
    expect(thr(text).diameterMm).toBeCloseTo(diameterMm, 3);
    expect(thr(text).pitchMm).toBeCloseTo(pitchMm, 3);
    expect(thr(text).stressAreaMm2).toBeUndefined();
  });

  it('keeps a pitch the standard does not list, and names the nearest', () => {
    expect(thr('M12x1.6')).toMatchObject({ known: false, nearest: 'M12x1.5' });
    expect(thr('1/2-28 UNEF')).toMatchObject({ known: false, nearest: '1/2-20 UNF' });
  });

  it.each([
    ['12x1.75', /lacks its letter/, 'M12x1.75'],
    ['1/2-20 UNC', /is UNF/, '1/2-20 UNF'],
    ['M26', /no coarse pitch/, 'M26x1.5'],
    ['M13', /not a diameter/, 'M12'],
    ['M6x20', /cannot be the pitch/, 'M6'],
    ['1/4-19 NPT', /18 threads per inch/, '1/4-18 NPT'],
    ['#7-32', /not a size/, undefined],
    ['bolt', /not a thread/, undefined],
    ['', /not a thread/, undefined],
  ])('%s is a problem', (text, message, nearest) => {
    const read = readThread(text);
    expect(read).toHaveProperty('problem');
    expect('problem' in read && read.problem).toMatch(message);
    expect(read.nearest).toBe(nearest);
  });
});
