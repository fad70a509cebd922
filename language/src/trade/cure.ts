/**
 * Usual cure times of sealants and threadlockers, for the reference alone: common practice. What is checked is what the
 * supply's own clause asks for.
 */
import type { SourceKey } from './sources.js';

/** What a cure clause gates. */
type CureEvent = 'torque' | 'fill' | 'run';

/** Usual times of one kind of supply, minutes. `fitWithinMin` is the working time before assembly. */
interface CureRow {
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
