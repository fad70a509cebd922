/** Torque in passes: the usual percentages of the final torque by bolt count. */
import { type SourceKey, sourceTitle } from './sources.js';

/** Usual passes for a flange, in percent; each set ends with a round pass at 100 % until nothing turns. */
const USUAL_STAGES: readonly {
  fromCount: number;
  toCount: number;
  percent: readonly number[];
  source: SourceKey;
}[] = [
  { fromCount: 3, toCount: 11, percent: [30, 60, 100], source: 'PCC1' },
  { fromCount: 12, toCount: 200, percent: [20, 40, 80, 100], source: 'PCC1' },
];

/** The usual percentages for a flange of `count` bolts (ASME PCC-1), or undefined below three. */
export function usualStages(count: number): { percent: readonly number[]; source: string } | undefined {
  const row = USUAL_STAGES.find((r) => count >= r.fromCount && count <= r.toCount);
  return row && { percent: row.percent, source: sourceTitle(row.source) };
}
