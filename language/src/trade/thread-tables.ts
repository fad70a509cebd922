/**
 * The threads a workshop meets: metric coarse and fine, unified inch, pipe. Data only; `thread.ts` reads
 * designations against them. Stress areas are not tabled: they follow from diameter and pitch.
 */
import type { SourceKey } from './sources.js';

/** One metric diameter with its coarse pitch and the finer pitches the standard lists, mm. */
export interface MetricRow {
  readonly diameterMm: number;
  readonly coarseMm: number;
  readonly fineMm: readonly number[];
  readonly source: SourceKey;
}

const metric = (diameterMm: number, coarseMm: number, ...fineMm: number[]): MetricRow => ({
  diameterMm,
  coarseMm,
  fineMm,
  source: 'ISO261',
});

/** ISO 261 general plan, M3 to M36: the fine column of ISO 262 first, then the finer general pitches. */
export const METRIC_THREADS: readonly MetricRow[] = [
  metric(3, 0.5, 0.35),
  metric(3.5, 0.6, 0.35),
  metric(4, 0.7, 0.5),
  metric(5, 0.8, 0.5),
  metric(6, 1, 0.75),
  metric(7, 1, 0.75),
  metric(8, 1.25, 1, 0.75),
  metric(9, 1.25, 1, 0.75),
  metric(10, 1.5, 1.25, 1, 0.75),
  metric(11, 1.5, 1, 0.75),
  metric(12, 1.75, 1.5, 1.25, 1),
  metric(14, 2, 1.5, 1.25, 1),
  metric(16, 2, 1.5, 1),
  metric(18, 2.5, 2, 1.5, 1),
  metric(20, 2.5, 2, 1.5, 1),
  metric(22, 2.5, 2, 1.5, 1),
  metric(24, 3, 2, 1.5, 1),
  metric(27, 3, 2, 1.5, 1),
  metric(30, 3.5, 3, 2, 1.5, 1),
  metric(33, 3.5, 3, 2, 1.5),
  metric(36, 4, 3, 2, 1.5),
];

/**
 * Diameters ISO 261 lists with fine pitches only (no coarse): plugs, hub nuts, adjusters, switches.
 * Kept apart so that `M26` alone is asked about instead of being given a pitch it does not have.
 */
export const METRIC_FINE_ONLY: readonly {
  diameterMm: number;
  fineMm: readonly number[];
  source: SourceKey;
}[] = [
  { diameterMm: 15, fineMm: [1.5, 1], source: 'ISO261' },
  { diameterMm: 17, fineMm: [1.5, 1], source: 'ISO261' },
  { diameterMm: 25, fineMm: [2, 1.5, 1], source: 'ISO261' },
  { diameterMm: 26, fineMm: [1.5], source: 'ISO261' },
  { diameterMm: 28, fineMm: [2, 1.5, 1], source: 'ISO261' },
  { diameterMm: 32, fineMm: [2, 1.5], source: 'ISO261' },
];

/** One unified size: major diameter in inches and threads per inch, coarse and fine. */
export interface UnifiedRow {
  readonly size: string;
  readonly diameterIn: number;
  readonly unc: number;
  readonly unf: number;
  /** A special pitch that is as common: the 1-14 of spindles, from memory. */
  readonly uns?: number;
  readonly source: SourceKey;
}

const unified = (size: string, diameterIn: number, unc: number, unf: number, uns?: number): UnifiedRow => ({
  size,
  diameterIn,
  unc,
  unf,
  ...(uns === undefined ? {} : { uns }),
  source: 'B1_1',
});

/** ASME B1.1 coarse and fine series, #4 to 1-1/2 in. */
export const UNIFIED_THREADS: readonly UnifiedRow[] = [
  unified('#4', 0.112, 40, 48),
  unified('#5', 0.125, 40, 44),
  unified('#6', 0.138, 32, 40),
  unified('#8', 0.164, 32, 36),
  unified('#10', 0.19, 24, 32),
  unified('#12', 0.216, 24, 28),
  unified('1/4', 0.25, 20, 28),
  unified('5/16', 0.3125, 18, 24),
  unified('3/8', 0.375, 16, 24),
  unified('7/16', 0.4375, 14, 20),
  unified('1/2', 0.5, 13, 20),
  unified('9/16', 0.5625, 12, 18),
  unified('5/8', 0.625, 11, 18),
  unified('3/4', 0.75, 10, 16),
  unified('7/8', 0.875, 9, 14),
  unified('1', 1, 8, 12, 14),
  unified('1-1/8', 1.125, 7, 12),
  unified('1-1/4', 1.25, 7, 12),
  unified('1-3/8', 1.375, 6, 12),
  unified('1-1/2', 1.5, 6, 12),
];

/** One pipe size: outside (gauge) diameter and threads per inch. */
export interface PipeRow {
  readonly size: string;
  readonly diameterMm: number;
  readonly perInch: number;
  readonly source: SourceKey;
}

const pipe = (source: SourceKey, size: string, diameterMm: number, perInch: number): PipeRow => ({
  size,
  diameterMm,
  perInch,
  source,
});

/** American taper pipe (NPT, NPTF): outside diameter of the pipe. */
export const NPT_THREADS: readonly PipeRow[] = [
  pipe('B1_20', '1/16', 0.3125 * 25.4, 27),
  pipe('B1_20', '1/8', 0.405 * 25.4, 27),
  pipe('B1_20', '1/4', 0.54 * 25.4, 18),
  pipe('B1_20', '3/8', 0.675 * 25.4, 18),
  pipe('B1_20', '1/2', 0.84 * 25.4, 14),
  pipe('B1_20', '3/4', 1.05 * 25.4, 14),
  pipe('B1_20', '1', 1.315 * 25.4, 11.5),
  pipe('B1_20', '1-1/4', 1.66 * 25.4, 11.5),
  pipe('B1_20', '1-1/2', 1.9 * 25.4, 11.5),
  pipe('B1_20', '2', 2.375 * 25.4, 11.5),
];

/** Whitworth pipe threads (G parallel, R/Rc/Rp sealing): major diameter. */
export const WHITWORTH_PIPE_THREADS: readonly PipeRow[] = [
  pipe('ISO228', '1/8', 9.728, 28),
  pipe('ISO228', '1/4', 13.157, 19),
  pipe('ISO228', '3/8', 16.662, 19),
  pipe('ISO228', '1/2', 20.955, 14),
  pipe('ISO228', '5/8', 22.911, 14),
  pipe('ISO228', '3/4', 26.441, 14),
  pipe('ISO228', '1', 33.249, 11),
  pipe('ISO228', '1-1/4', 41.91, 11),
  pipe('ISO228', '1-1/2', 47.803, 11),
  pipe('ISO228', '2', 59.614, 11),
];
