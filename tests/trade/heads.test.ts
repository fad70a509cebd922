// Head sizes by thread: the printed tables, and pairs that no table has.
import { describe, expect, it } from 'vitest';
import {
  headSizes,
  headSuspicious,
  hexalobularSizes,
  hexalobularSuspicious,
  inchFraction,
  isKey,
  threadsForHead,
} from '../../language/src/trade/index.js';
import { thr } from './support.js';

/** Width across flats by thread: each list of one source must be in our tables, and none may be called odd. */
const PRINTED: readonly [source: string, sizes: Record<string, number>][] = [
  [
    'ISO 4014, bd_warehouse hex_head_parameters.csv',
    { M5: 8, M6: 10, M8: 13, M10: 16, M12: 18, M14: 21, M16: 24, M18: 27, M20: 30, M22: 34, M24: 36 },
  ],
  [
    'DIN 933, creativefasteners.co.in',
    {
      M3: 5.5,
      M4: 7,
      M5: 8,
      M6: 10,
      M8: 13,
      M10: 17,
      M12: 19,
      M14: 22,
      M16: 24,
      M18: 27,
      M20: 30,
      M22: 32,
      M24: 36,
      M27: 41,
      M30: 46,
    },
  ],
  [
    'JIS B 1180 annex, small hexagon, neji-trivia.jp',
    { M8: 12, M10: 14, M12: 17, M14: 19, M16: 22, M18: 24, M20: 27, M22: 30, M24: 32, M27: 36, M30: 41 },
  ],
  ['JIS B 1189 flange bolts, boltport.com', { M5: 7, M6: 8, M8: 10, M10: 13, M12: 15, M14: 18, M16: 21 }],
  [
    'DIN 6923 flange nuts (minimum widths rounded up), scribd.com',
    { M5: 8, M6: 10, M8: 13, M10: 15, M12: 18, M14: 21 },
  ],
  [
    'ISO 4762 keys, JIS B 1176:2014 table, mikipulley.co.jp',
    { M3: 2.5, M4: 3, M5: 4, M6: 5, M8: 6, M10: 8, M12: 10, M14: 12, M16: 14, M20: 17 },
  ],
  ['DIN 7991 countersunk, mpi-inox.odoo.com', { M3: 2, M4: 2.5, M5: 3, M6: 4, M8: 5, M10: 6 }],
  ['DIN 7984 low heads, mpi-inox.odoo.com', { M3: 2, M4: 2.5, M5: 3, M6: 4, M8: 5, M10: 7 }],
  ['ISO 4029 set screws, mpi-inox.odoo.com', { M3: 1.5, M4: 2, M5: 2.5, M6: 3, M8: 4, M10: 5, M12: 6 }],
  ['DIN 913 set screws, creativefasteners.co.in', { M16: 8, M20: 10, M24: 12 }],
  ['plugs with a hexagon inside, common practice', { 'M18x1.5': 8, 'M20x1.5': 10, 'M24x1.5': 17 }],
  ['wheel nuts 17, 19, 21 mm, engineerfix.com', { 'M12x1.5': 17, 'M12x1.25': 21, 'M14x1.5': 21 }],
];

describe.each(PRINTED)('%s', (_, sizes) => {
  it.each(Object.entries(sizes))('%s: %d mm', (thread, mm) => {
    expect(headSizes(thr(thread)).map((h) => h.acrossFlatsMm)).toContain(mm);
    expect(headSuspicious(thr(thread), mm)).toBeUndefined();
  });
});

describe('ASME B18.2.1 (k-tbolt.com chart), in', () => {
  it.each([
    ['1/4-20', '7/16 in'],
    ['5/16-18', '1/2 in'],
    ['3/8-16', '9/16 in'],
    ['7/16-14', '5/8 in'],
    ['1/2-13', '3/4 in'],
    ['9/16-12', '13/16 in'],
    ['5/8-11', '15/16 in'],
    ['3/4-10', '1 1/8 in'],
    ['7/8-9', '1 5/16 in'],
    ['1-8', '1 1/2 in'],
    ['#10-24', '5/16 in'],
  ])('%s: %s', (thread, printed) => {
    expect(headSizes(thr(thread)).map((h) => h.printed)).toContain(printed);
  });
});

describe('hexalobular sizes (anzugsmoment.de chart)', () => {
  it.each([
    ['M3', 'T10'],
    ['M4', 'T20'],
    ['M5', 'T25'],
    ['M6', 'T30'],
    ['M8', 'T45'],
    ['M10', 'T50'],
    ['M12', 'T55'],
    ['M14', 'T60'],
    ['M16', 'T70'],
  ])('%s: %s', (thread, size) => {
    expect(hexalobularSizes(thr(thread))).toContain(size);
    expect(hexalobularSuspicious(thr(thread), size)).toBeUndefined();
  });
  it('T30 on M8 is the screw that holds a brake disc', () => {
    expect(hexalobularSuspicious(thr('M8'), 'T30')).toBeUndefined();
  });
  it('T20 on M12 is odd', () => {
    expect(hexalobularSuspicious(thr('M12'), 'T20')?.usual).toContain('T55');
    expect(hexalobularSuspicious(thr('1/4-20'), 'T20')).toBeUndefined();
  });
});

describe('an odd pair', () => {
  it.each([
    ['M6', 13],
    ['M8', 17],
    ['M14x1.5', 13],
    ['M10', 24],
  ])('%s with %d mm', (thread, mm) => {
    expect(headSuspicious(thr(thread), mm)?.usual.length).toBeGreaterThan(0);
  });
  it('says what the head suggests', () => {
    expect(headSuspicious(thr('M6'), 13)?.suggests).toEqual(['M8', 'M10']);
    expect(threadsForHead((7 / 16) * 25.4)).toEqual(['1/4']);
  });
  it('is not looked for on pipe threads and diameters without a table', () => {
    expect(headSuspicious(thr('3/4-14 NPT'), 12.7)).toBeUndefined();
    expect(headSuspicious(thr('M3.5'), 6)).toBeUndefined();
  });
  it('takes 13/16 in and 20.8 mm for one socket', () => {
    expect(headSuspicious(thr('M14x1.25'), (13 / 16) * 25.4)).toBeUndefined();
  });
});

describe('a hexagon inside the head', () => {
  it.each([
    ['M10x1.5', 8],
    ['M16', 14],
    ['M18x1.5', 8],
    ['G3/8', 8],
    ['1/2-13', (3 / 8) * 25.4],
  ])('%s with %d mm is turned by a key', (thread, mm) => {
    expect(isKey(thr(thread), mm)).toBe(true);
  });
  it.each([
    ['M10x1.0', 9],
    ['M8x1.25', 8],
    ['M12', 18],
    ['G1/8', 13],
  ])('%s with %d mm is not', (thread, mm) => {
    expect(isKey(thr(thread), mm)).toBe(false);
  });
});

it.each([
  [7 / 16, '7/16'],
  [1.125, '1-1/8'],
  [0.75, '3/4'],
  [2, '2'],
  [11 / 32, '11/32'],
])('%d in is marked %s', (inch, text) => {
  expect(inchFraction(inch)).toBe(text);
});

it.each([
  ['M24x1.5', 32],
  ['M10x1.0', 11],
  ['M8x1.25', 10],
  ['M12x1.5', 18],
  ['M14x1.5', 21],
  ['M10', 16],
  ['7/16-14', (5 / 8) * 25.4],
  ['1/4-20', (7 / 16) * 25.4],
  ['M6', 10],
])('house pair of an invented depot: %s with %d mm is silent', (thread, mm) => {
  expect(headSuspicious(thr(thread), mm)).toBeUndefined();
});
