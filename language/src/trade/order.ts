/**
 * Tightening orders: star and cross on a circle, inside-out and outside-in over rows and columns or measured
 * positions, and an order written out. Positions are counted from 1: clockwise from the top on a circle, row by
 * row from the top left in a grid.
 */
import { gridPositions, nearestFirst, type Point } from './order-grid.js';
import { type SourceKey, sourceTitle } from './sources.js';

/** Named patterns of the language. */
export const ORDER_PATTERNS = ['star', 'cross', 'inside-out', 'outside-in'] as const;
export type OrderPattern = (typeof ORDER_PATTERNS)[number];

/** How the fasteners lie: rows (columns worked out from the count when absent) or measured places. */
export type OrderLayout =
  | { readonly rows: number; readonly columns?: number | undefined }
  | { readonly coordinates: readonly Point[] };

/** What is asked for: a named pattern, or the positions written out in turn. */
export interface OrderInput {
  readonly pattern: OrderPattern | readonly number[];
  readonly count: number;
  readonly layout?: OrderLayout | undefined;
}

/** An order that can be done, as data for sentences and diagrams. */
export interface TighteningOrder {
  readonly pattern: OrderPattern | 'custom';
  readonly count: number;
  /** Positions in the order they are tightened, each once, from 1. */
  readonly order: readonly number[];
  /** Place of each position, index 0 is position 1. */
  readonly positions: readonly Point[];
  readonly shape: 'circle' | 'grid' | 'points';
  /** Neighbours tightened as one (large flanges), or opposite pairs of a cross. */
  readonly groups?: readonly (readonly number[])[];
  /** True where no layout was given and two rows were taken. */
  readonly layoutAssumed: boolean;
  readonly source: string;
}

/** Why an order cannot be done. */
export interface OrderProblem {
  readonly problem: string;
  /** What could be done instead with the same fasteners. */
  readonly instead?: OrderPattern;
}

/** From this many bolts a flange is tightened in groups of four neighbours (ASME PCC-1 practice for 48). */
const GROUPED_FROM = 48;
/** More than the largest flange a shop meets: a count past it is a slip, and must not cost time. */
const MOST = 200;

/**
 * Works out a tightening order, or says why it is impossible for the count. Star: 3 to 24 fasteners on a circle.
 * Cross: an even number from 4, each followed by the one opposite (ASME PCC-1 legacy pattern). Inside-out: nearest
 * the centre first, each followed by the one opposite. Source of each in the result.
 */
export function tighteningOrder(input: OrderInput): TighteningOrder | OrderProblem {
  const { pattern, count, layout } = input;
  if (!Number.isInteger(count) || count < 1)
    return { problem: 'the number of fasteners must be a whole number above zero' };
  if (count > MOST) return { problem: `an order is worked out for at most ${MOST} fasteners, not ${count}` };
  const misfit = layoutProblem(count, layout);
  if (misfit) return { problem: misfit };
  if (typeof pattern !== 'string') return writtenOut(pattern, count, layout);
  if (pattern === 'inside-out' || pattern === 'outside-in') return byDistance(pattern, count, layout);
  if (count < 3)
    return { problem: `${pattern} needs at least three fasteners; with ${count} there is nothing to cross` };
  if (pattern === 'star' && count > 24)
    return count % 2 === 0
      ? { problem: `star is for 3 to 24 fasteners, not ${count}; use cross`, instead: 'cross' }
      : { problem: `star is for 3 to 24 fasteners, not ${count}; write the positions out` };
  if (pattern === 'cross' && count % 2 === 1)
    return { problem: `cross needs an even number of fasteners, not ${count}; use star`, instead: 'star' };
  return aroundCircle(pattern, count, layout);
}

/** Tells an order from a problem. */
export function isOrder(value: TighteningOrder | OrderProblem): value is TighteningOrder {
  return 'order' in value;
}

/** The same order backwards: how to loosen what was tightened so (common practice). */
export function reverseOrder(order: TighteningOrder): TighteningOrder {
  const swapped =
    order.pattern === 'inside-out'
      ? 'outside-in'
      : order.pattern === 'outside-in'
        ? 'inside-out'
        : order.pattern;
  const groups = order.groups?.map((g) => [...g].reverse()).reverse();
  return { ...order, pattern: swapped, order: [...order.order].reverse(), ...(groups ? { groups } : {}) };
}

/**
 * Order round a circle by halving: the order of n is the order of n/2, each position followed by the one opposite;
 * an odd number steps by the whole number below half, so each next one lies nearly opposite. Gives the trade's 1-3-5-2-4 for
 * five and the published 12-bolt cross 1-7, 4-10, 2-8, 5-11, 3-9, 6-12.
 */
function circleOrder(count: number): number[] {
  if (count % 2 === 0) return circleOrder(count / 2).flatMap((p) => [p, p + count / 2]);
  const step = Math.max(1, (count - 1) / 2);
  return Array.from({ length: count }, (_, turn) => ((turn * step) % count) + 1);
}

/** Places of `count` positions on a circle, clockwise from the top. */
function circlePositions(count: number): Point[] {
  return Array.from({ length: count }, (_, i) => {
    const turn = (2 * Math.PI * i) / count;
    return { x: 0.5 + 0.5 * Math.sin(turn), y: 0.5 - 0.5 * Math.cos(turn) };
  });
}

function aroundCircle(
  pattern: 'star' | 'cross',
  count: number,
  layout: OrderLayout | undefined,
): TighteningOrder {
  const grouped = pattern === 'cross' && count >= GROUPED_FROM && count % 8 === 0;
  const groups = grouped
    ? circleOrder(count / 4).map((g) => [1, 2, 3, 4].map((k) => (g - 1) * 4 + k))
    : pattern === 'cross'
      ? pairs(circleOrder(count))
      : undefined;
  const round = groups ? groups.flat() : circleOrder(count);
  // Measured places: rank them clockwise from the top, then the circle's order runs over the ranks.
  const points = layout && 'coordinates' in layout ? layout.coordinates : undefined;
  const rank = points ? clockwise(points) : undefined;
  const place = (p: number) => (rank ? (rank[p - 1] ?? p) : p);
  const source: SourceKey = pattern === 'cross' ? 'PCC1' : 'PRACTICE';
  return {
    pattern,
    count,
    order: round.map(place),
    positions: points ? fit(points) : circlePositions(count),
    shape: points ? 'points' : 'circle',
    ...(groups ? { groups: groups.map((g) => g.map(place)) } : {}),
    layoutAssumed: false,
    source: sourceTitle(source),
  };
}

function byDistance(
  pattern: 'inside-out' | 'outside-in',
  count: number,
  layout: OrderLayout | undefined,
): TighteningOrder {
  const points = layout && 'coordinates' in layout ? layout.coordinates : undefined;
  const rows = layout && 'rows' in layout ? layout : undefined;
  const places = points ?? gridPositions(count, rows ?? { rows: Math.min(2, count) });
  const inward = nearestFirst(places);
  return {
    pattern,
    count,
    order: pattern === 'inside-out' ? inward : inward.reverse(),
    positions: fit(places),
    shape: points ? 'points' : 'grid',
    layoutAssumed: layout === undefined,
    source: sourceTitle('PRACTICE'),
  };
}

function writtenOut(
  list: readonly number[],
  count: number,
  layout: OrderLayout | undefined,
): TighteningOrder | OrderProblem {
  const stray = list.find((p) => !Number.isInteger(p) || p < 1 || p > count);
  if (stray !== undefined)
    return { problem: `there is no position ${stray}: the fasteners are counted 1 to ${count}` };
  const twice = list.find((p, i) => list.indexOf(p) !== i);
  if (twice !== undefined) return { problem: `position ${twice} comes twice in the order` };
  const missing = Array.from({ length: count }, (_, i) => i + 1).filter((p) => !list.includes(p));
  if (missing.length > 0)
    return {
      problem: `the order leaves out ${missing.length === 1 ? 'position' : 'positions'} ${missing.join(', ')}`,
    };
  const points = layout && 'coordinates' in layout ? layout.coordinates : undefined;
  const rows = layout && 'rows' in layout ? layout : undefined;
  return {
    pattern: 'custom',
    count,
    order: [...list],
    positions: points ? fit(points) : rows ? fit(gridPositions(count, rows)) : circlePositions(count),
    shape: points ? 'points' : rows ? 'grid' : 'circle',
    layoutAssumed: false,
    source: sourceTitle('PRACTICE'),
  };
}

function layoutProblem(count: number, layout: OrderLayout | undefined): string | undefined {
  if (!layout) return undefined;
  if ('coordinates' in layout) {
    if (layout.coordinates.length === count) return undefined;
    return `${layout.coordinates.length} places are given for ${count} fasteners`;
  }
  const { rows, columns } = layout;
  if (!Number.isInteger(rows) || rows < 1 || rows > count)
    return `${count} fasteners cannot lie in ${rows} rows`;
  if (columns !== undefined && rows * columns !== count)
    return `${rows} rows of ${columns} hold ${rows * columns} fasteners, not ${count}`;
  return undefined;
}

/** Position numbers sorted clockwise from the top, round the middle of the places. */
function clockwise(points: readonly Point[]): number[] {
  const middle = centre(points);
  const turn = (p: Point) => (Math.atan2(p.x - middle.x, middle.y - p.y) + 2 * Math.PI) % (2 * Math.PI);
  return points
    .map((_, i) => i + 1)
    .sort((a, b) => turn(points[a - 1] ?? middle) - turn(points[b - 1] ?? middle));
}

function centre(points: readonly Point[]): Point {
  const sum = points.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

/** Scales places into the unit square, keeping their shape, middled in the shorter direction. */
function fit(points: readonly Point[]): Point[] {
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const size = Math.max(width, height) || 1;
  return points.map((p) => ({
    x: (p.x - left - width / 2) / size + 0.5,
    y: (p.y - top - height / 2) / size + 0.5,
  }));
}

function pairs(order: readonly number[]): number[][] {
  return order.flatMap((p, i) => (i % 2 === 0 ? [[p, order[i + 1] ?? p]] : []));
}
