/** Torque in passes: percentages of the final torque, usual sets by bolt count, and what is wrong with a set. */
import { type SourceKey, sourceTitle } from './sources.js';

/** One pass over all fasteners in the order. */
export interface Stage {
  readonly percent: number;
  readonly torqueNm: number;
}

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

/** Stage torques of a final torque (N·m). The percentages must rise and end at 100, else the problem is said. */
export function stages(
  percentages: readonly number[],
  torqueNm: number,
): readonly Stage[] | { readonly problem: string } {
  if (percentages.length === 0) return { problem: 'no stage is given' };
  if (percentages.some((p) => !(p > 0 && p <= 100)))
    return { problem: 'a stage is more than 0 and at most 100 % of the torque' };
  if (percentages.some((p, i) => i > 0 && p <= (percentages[i - 1] ?? 0)))
    return { problem: 'each stage must be higher than the one before' };
  if (percentages[percentages.length - 1] !== 100) return { problem: 'the last stage must be 100 %' };
  return percentages.map((percent) => ({ percent, torqueNm: (torqueNm * percent) / 100 }));
}
