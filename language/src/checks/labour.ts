// R111: declared labour against the usual minutes of the steps.
import { finding } from '../diagnostics/define.js';
import { labourFarOff } from '../diagnostics/r111-labour-far-off.js';
import { declaredLabour } from '../state/job-time.js';
import { labourCheck, timeText } from '../trade/time.js';
import type { Check } from './check.js';

/** Too short is told on the lines that every combination has; too long where the steps are all written. */
export const labour: Check = ({ job, run }) => {
  if (!run) return [];
  const { status } = job.file.status ?? {};
  const isWhole = status !== undefined && status.text !== 'draft';
  return declaredLabour(run).flatMap(({ line, time, verdict, declaredMin }) => {
    const isShort =
      verdict === 'too short' &&
      labourCheck(declaredMin, { ...time, handsOnMin: time.leastHandsOnMin }).verdict === verdict;
    const isLong = verdict === 'too long' && isWhole;
    if (line.broken || !line.time || (!isShort && !isLong)) return [];
    return [
      finding(
        labourFarOff,
        {
          file: job.file.path,
          span: line.time,
          ...(time.variants === undefined ? {} : { variants: time.variants }),
        },
        {
          declared: timeText(declaredMin),
          worked: timeText(isShort ? time.leastHandsOnMin : time.handsOnMin),
          isShort,
        },
      ),
    ];
  });
};
