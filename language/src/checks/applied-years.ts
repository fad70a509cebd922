// V109: the model years that a procedure is for, against those of the vehicle.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { yearsOutside } from '../diagnostics/v109-years-outside.js';
import { type Job, yearsOf } from '../names/job.js';
import { clausesOf } from '../names/model.js';
import { numberOf } from '../quantity/index.js';
import type { AppliesLine } from '../syntax/tree.js';
import type { Check } from './check.js';

export const appliedYears: Check = ({ job }) => job.file.applies.flatMap((line) => yearFindings(job, line));

function yearFindings({ file, scope }: Job, line: AppliesLine): Finding[] {
  const { vehicle, from, to } = line;
  if (line.broken || !vehicle || from?.value === undefined) return [];
  const first = numberOf(from.value);
  const last = to?.value === undefined ? undefined : numberOf(to.value);
  const thing = scope.resolve(vehicle.text);
  const made = thing?.kind === 'vehicle' ? yearsOf(clausesOf(thing, 'years')) : undefined;
  const span = { start: from.start, end: to?.end ?? from.end };
  const say = (year: number | undefined, years: string, text: string): Finding[] => {
    const fixes: Fix[] = [{ title: `Write \`${text}\``, edits: [{ file: file.path, span, text }] }];
    return [finding(yearsOutside, { file: file.path, span, fixes }, { vehicle: vehicle.text, years, year })];
  };
  if (last !== undefined && last < first) return say(undefined, '', `${last} to ${first}`);
  if (made === undefined) return [];
  const outside = [first, last].find((year) => year !== undefined && (year < made.from || year > made.to));
  if (outside === undefined) return [];
  const years = made.from === made.to ? `${made.from}` : `${made.from} to ${made.to}`;
  return say(outside, years, last === undefined ? `${made.from}` : years);
}
