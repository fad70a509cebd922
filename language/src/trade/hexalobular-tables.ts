/** Hexalobular drive sizes by thread diameter (mm). Data only; `heads.ts` reads it. */
import type { SourceKey } from './sources.js';

/** Hexalobular drives by thread: internal T sizes by head form, external E sizes. */
export const HEXALOBULAR: readonly {
  name: string;
  sizes: Readonly<Record<number, readonly string[]>>;
  source: SourceKey;
}[] = [
  {
    name: 'socket, cylinder or countersunk head',
    source: 'ISO10664',
    sizes: {
      3: ['T10'],
      3.5: ['T15', 'T10'],
      4: ['T20'],
      5: ['T25'],
      6: ['T30'],
      8: ['T45', 'T40'],
      10: ['T50'],
      12: ['T55'],
      14: ['T60'],
      16: ['T70'],
      18: ['T80'],
      20: ['T90'],
    },
  },
  {
    name: 'external head',
    source: 'MEMORY',
    sizes: {
      5: ['E6', 'E7'],
      6: ['E8'],
      7: ['E10'],
      8: ['E10', 'E11'],
      10: ['E12', 'E14'],
      12: ['E14', 'E16', 'E18'],
      14: ['E18', 'E20'],
      16: ['E20', 'E24'],
    },
  },
  {
    // Countersunk screws that only hold a brake disc or drum until the wheel is on have T30 on M8.
    name: 'low, flange or holding screw head',
    source: 'PRACTICE',
    sizes: {
      6: ['T25', 'T27'],
      8: ['T40', 'T45', 'T30'],
      10: ['T45', 'T50', 'T55'],
      12: ['T50', 'T55', 'T60'],
      14: ['T60', 'T70'],
    },
  },
];
