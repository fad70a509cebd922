// G115: work nested deeper than anything follows. Asked before the work is run, so that no text makes the run fall.
import { finding } from '../diagnostics/define.js';
import { DEEPEST, nestedTooDeep } from '../diagnostics/g115-nested-too-deep.js';
import { type Job, linesOfWork } from '../names/job.js';
import type { FileModel } from '../names/model.js';
import type { Line } from '../syntax/tree.js';
import type { Check } from './check.js';

export const nested: Check = ({ job: { file } }) => {
  const deep = firstTooDeep(file);
  return deep === undefined
    ? []
    : [finding(nestedTooDeep, { file: file.path, span: deep.code }, { most: DEEPEST })];
};

/** Whether the work of a job, and of what it performs from, can be run. */
export const canRun = ({ scopes }: Job): boolean =>
  scopes.every(({ file }) => firstTooDeep(file) === undefined);

function firstTooDeep(file: FileModel): Line | undefined {
  for (const line of linesOfWork(file)) if (line.depth > DEEPEST) return line;
  return undefined;
}
