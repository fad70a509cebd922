/** Usual cure times of sealants and threadlockers: common practice, overridden by the supply's own clause. */
import { type SourceKey, sourceTitle } from './sources.js';

/** What a cure clause gates. */
export type CureEvent = 'torque' | 'fill' | 'run';

/** Usual times of one kind of supply, minutes. `fitWithinMin` is the working time before assembly. */
export interface CureRow {
  readonly kind: string;
  readonly fitWithinMin?: number;
  readonly afterMin: Readonly<Partial<Record<CureEvent, number>>>;
  readonly fullMin: number;
  readonly source: SourceKey;
}

/** Usual times. The product's own sheet comes first. */
export const CURES: readonly CureRow[] = [
  {
    kind: 'silicone gasket maker',
    fitWithinMin: 10,
    afterMin: { torque: 60, fill: 120, run: 1440 },
    fullMin: 1440,
    source: 'PRACTICE',
  },
  {
    kind: 'anaerobic flange sealant',
    fitWithinMin: 30,
    afterMin: { fill: 60, run: 60 },
    fullMin: 1440,
    source: 'PRACTICE',
  },
  { kind: 'threadlocker', fitWithinMin: 10, afterMin: { run: 60 }, fullMin: 1440, source: 'PRACTICE' },
  {
    kind: 'thread sealant',
    fitWithinMin: 10,
    afterMin: { fill: 30, run: 60 },
    fullMin: 1440,
    source: 'PRACTICE',
  },
  {
    kind: 'structural adhesive',
    fitWithinMin: 10,
    afterMin: { run: 1440 },
    fullMin: 4320,
    source: 'PRACTICE',
  },
];

/** Minutes to wait before an event, and whether they are the supply's own or the usual ones. */
export interface CureTime {
  readonly minutes: number;
  readonly own: boolean;
  readonly source: string;
}

/**
 * The time before `event` for a kind of supply: its own clause where written (minutes), else the usual time, else
 * undefined (nothing is known, nothing is claimed).
 */
export function cureTime(kind: string, event: CureEvent, ownMin?: number): CureTime | undefined {
  if (ownMin !== undefined) return { minutes: ownMin, own: true, source: "the supply's own clause" };
  const row = CURES.find((c) => c.kind === kind);
  const minutes = row?.afterMin[event];
  return row && minutes !== undefined ? { minutes, own: false, source: sourceTitle(row.source) } : undefined;
}
