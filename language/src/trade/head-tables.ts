/**
 * Head sizes by thread diameter: width across flats (mm) by family of standard, inch heads, wheel nuts and
 * fittings. Several families share a diameter; a pair is odd only when no family has it.
 */
import type { SourceKey } from './sources.js';

/** One family of heads: width across flats by thread diameter, both mm. */
export interface HeadFamily {
  readonly name: string;
  readonly sizes: Readonly<Record<number, readonly number[]>>;
  readonly source: SourceKey;
}

/** Metric heads that take a hexagon socket, spanner or key. */
export const METRIC_HEADS: readonly HeadFamily[] = [
  {
    name: 'hexagon head',
    source: 'ISO4014',
    sizes: {
      3: [5.5],
      4: [7],
      5: [8],
      6: [10],
      7: [11],
      8: [13],
      10: [16],
      12: [18],
      14: [21],
      16: [24],
      18: [27],
      20: [30],
      22: [34],
      24: [36],
      27: [41],
      30: [46],
      33: [50],
      36: [55],
    },
  },
  {
    name: 'hexagon head, older DIN',
    source: 'DIN931',
    sizes: {
      3: [5.5],
      4: [7],
      5: [8],
      6: [10],
      7: [11],
      8: [13],
      10: [17],
      12: [19],
      14: [22],
      16: [24],
      18: [27],
      20: [30],
      22: [32],
      24: [36],
      27: [41],
      30: [46],
      33: [50],
      36: [55],
    },
  },
  {
    name: 'small hexagon head (JIS)',
    source: 'JIS1180',
    sizes: {
      8: [12],
      10: [14],
      12: [17],
      14: [19],
      16: [22],
      18: [24],
      20: [27],
      22: [30],
      24: [32],
      27: [36],
      30: [41],
    },
  },
  {
    name: 'flange bolt, small head',
    source: 'JIS1189',
    sizes: { 5: [7], 6: [8], 8: [10], 10: [13], 12: [15], 14: [18], 16: [21] },
  },
  {
    name: 'flange nut',
    source: 'ISO4161',
    sizes: { 5: [8], 6: [10], 8: [13], 10: [15], 12: [18], 14: [21], 16: [24], 20: [30] },
  },
  {
    name: 'flange bolt, larger head',
    source: 'MEMORY',
    sizes: { 5: [8], 6: [10], 8: [13], 10: [15, 16], 12: [16, 18], 14: [21], 16: [24], 18: [27], 20: [30] },
  },
  {
    name: 'wheel nut or bolt',
    source: 'PRACTICE',
    sizes: {
      10: [17],
      12: [17, 19, 21, 22],
      14: [17, 19, 21, 22, 23],
      18: [24, 27, 30],
      20: [27, 30, 33, 38],
      22: [30, 32, 33],
    },
  },
  {
    name: 'axle or hub nut',
    source: 'PRACTICE',
    sizes: {
      16: [24],
      18: [27],
      20: [30, 32],
      22: [30, 32, 34],
      24: [30, 32, 36],
      27: [36, 38, 41],
      30: [36, 41, 46],
      36: [46, 50, 55],
    },
  },
  {
    name: 'bleed screw or brake union',
    source: 'PRACTICE',
    sizes: {
      5: [7, 8],
      6: [7, 8],
      7: [7, 8, 9],
      8: [8, 9, 10, 11],
      10: [9, 10, 11, 12, 13, 14],
      12: [12, 13, 14, 17],
    },
  },
  {
    name: 'plug, banjo bolt or sensor',
    source: 'PRACTICE',
    sizes: {
      8: [10, 12, 13],
      10: [12, 13, 14, 17],
      12: [14, 15, 16, 17, 18, 19, 24],
      14: [16, 17, 19, 20.8, 21, 22, 24, 27],
      16: [19, 21, 22, 24, 27],
      18: [20.8, 21, 22, 24, 27],
      20: [22, 24, 27, 30],
      22: [22, 24, 27, 30, 32],
      24: [24, 27, 30, 32],
      26: [32],
      27: [32],
      30: [36],
    },
  },
];

/** Hexagon keys of what has its hexagon inside, mm by thread diameter; written `hex 8 mm` too. */
export const KEYS: readonly HeadFamily[] = [
  {
    name: 'socket head, key',
    source: 'ISO4762',
    sizes: {
      3: [2.5],
      4: [3],
      5: [4],
      6: [5],
      8: [6],
      10: [8],
      12: [10],
      14: [12],
      16: [14],
      18: [14],
      20: [17],
      24: [19],
      30: [22],
    },
  },
  {
    name: 'countersunk or button head, key',
    source: 'ISO10642',
    sizes: { 3: [2], 4: [2.5], 5: [3], 6: [4], 8: [5], 10: [6], 12: [8], 16: [10], 20: [12] },
  },
  {
    name: 'low socket head, key',
    source: 'DIN7984',
    sizes: { 3: [2], 4: [2.5], 5: [3], 6: [4], 8: [5], 10: [7], 12: [8], 16: [12], 20: [14], 24: [17] },
  },
  {
    name: 'set screw, key',
    source: 'ISO4026',
    sizes: {
      3: [1.5],
      4: [2],
      5: [2.5],
      6: [3],
      8: [4],
      10: [5],
      12: [6],
      14: [6],
      16: [8],
      20: [10],
      24: [12],
    },
  },
  {
    name: 'plug, key',
    source: 'PRACTICE',
    sizes: {
      8: [4, 5],
      10: [5, 6],
      12: [6, 8],
      14: [6, 7, 8],
      16: [8, 10],
      18: [8, 10, 12],
      20: [8, 10, 12, 14],
      22: [10, 12, 14, 17],
      24: [12, 14, 17],
      26: [12, 17],
      27: [12, 17],
      30: [17, 19],
      33: [17, 19],
    },
  },
];

/** Inch hexagon heads (ASME B18.2.1) and wheel nuts: width across flats in inches by size. */
export const INCH_HEADS: readonly {
  name: string;
  sizes: Readonly<Record<string, readonly number[]>>;
  source: SourceKey;
}[] = [
  {
    name: 'hexagon head',
    source: 'B18_2_1',
    sizes: {
      '#6': [1 / 4],
      '#8': [1 / 4],
      '#10': [5 / 16],
      '#12': [5 / 16],
      '1/4': [7 / 16],
      '5/16': [1 / 2],
      '3/8': [9 / 16],
      '7/16': [5 / 8],
      '1/2': [3 / 4],
      '9/16': [13 / 16],
      '5/8': [15 / 16],
      '3/4': [9 / 8],
      '7/8': [21 / 16],
      '1': [3 / 2],
      '1-1/8': [27 / 16],
      '1-1/4': [15 / 8],
    },
  },
  {
    name: 'hexagon nut or machine screw nut',
    source: 'MEMORY',
    sizes: {
      '#6': [5 / 16],
      '#8': [11 / 32],
      '#10': [3 / 8],
      '#12': [7 / 16],
      '7/16': [11 / 16],
      '9/16': [7 / 8],
    },
  },
  {
    name: 'flange bolt',
    source: 'MEMORY',
    sizes: {
      '1/4': [3 / 8],
      '5/16': [1 / 2],
      '3/8': [9 / 16],
      '7/16': [5 / 8],
      '1/2': [3 / 4],
      '5/8': [15 / 16],
    },
  },
  {
    name: 'wheel nut',
    source: 'PRACTICE',
    sizes: {
      '7/16': [11 / 16, 3 / 4],
      '1/2': [3 / 4, 13 / 16, 7 / 8],
      '9/16': [7 / 8, 13 / 16],
      '5/8': [15 / 16, 1],
      '3/4': [3 / 2],
    },
  },
  {
    name: 'socket head, key',
    source: 'MEMORY',
    sizes: {
      '#6': [7 / 64],
      '#8': [9 / 64],
      '#10': [5 / 32],
      '1/4': [3 / 16],
      '5/16': [1 / 4],
      '3/8': [5 / 16],
      '7/16': [3 / 8],
      '1/2': [3 / 8],
      '5/8': [1 / 2],
      '3/4': [5 / 8],
      '7/8': [3 / 4],
      '1': [3 / 4],
    },
  },
  {
    name: 'flare nut of a hose or pipe (SAE J514)',
    source: 'MEMORY',
    sizes: {
      '5/16': [3 / 8],
      '3/8': [7 / 16, 1 / 2],
      '7/16': [9 / 16],
      '1/2': [5 / 8],
      '9/16': [11 / 16],
      '5/8': [5 / 8],
      '3/4': [7 / 8],
      '7/8': [1],
      '1': [9 / 8],
    },
  },
  {
    name: 'brake union or bleed screw',
    source: 'PRACTICE',
    sizes: {
      '1/4': [1 / 4, 5 / 16],
      '5/16': [5 / 16, 3 / 8],
      '3/8': [3 / 8, 7 / 16],
      '7/16': [7 / 16, 1 / 2],
      '1/2': [1 / 2, 9 / 16],
      '9/16': [5 / 8],
    },
  },
];
