// W105, W106: inspections that say neither what to look for nor what follows. Part of the wording review.
import { type Finding, finding } from '../diagnostics/define.js';
import { inspectWithoutCriterion } from '../diagnostics/w105-inspect-without-criterion.js';
import { rejectWithoutConsequence } from '../diagnostics/w106-reject-without-consequence.js';
import { type Job, linesOfWork } from '../names/job.js';
import type { Line } from '../syntax/tree.js';
import type { Check } from './check.js';
import { statementsOf, type WorkStatement, workStatements } from './own-lines.js';

export const inspections: Check = ({ job, library }) => {
  if (!library.settings.wording) return [];
  const inspected = statementsOf(job, ({ word }) => word === 'inspect');
  return [...inspected.flatMap((w) => criterionFindings(job, w)), ...consequenceFindings(job)];
};

/** An inspection with neither list nor remark; where `if` asks for the result, a list is due all the same. */
function criterionFindings(job: Job, { statement }: WorkStatement): Finding[] {
  const { line } = statement;
  const [first] = statement.objects;
  if (!first || line.prose || line.children.some(isCriterion)) return [];
  return [
    finding(
      inspectWithoutCriterion,
      { file: job.file.path, span: first.item.name },
      { name: first.item.name.text },
    ),
  ];
}

function isCriterion(line: Line): boolean {
  return line.kind === 'text' && (line.word === 'reject' || line.word === 'expect');
}

/**
 * Lists of what is rejected with no `if rejected` after them; one finding for the job. What fails when the work is handed back
 * is work not done, and needs no word.
 */
function consequenceFindings(job: Job): Finding[] {
  const asked = new Set<string>();
  for (const l of linesOfWork(job.file))
    if (l.kind === 'if' && l.test === 'rejected' && l.subject) asked.add(l.subject.text);
  const closing = job.file.work.filter((s) => s.word === 'completion');
  const open: Line[] = [];
  for (const {
    statement: { line },
  } of workStatements(job)) {
    const reject = line.children.find((c) => c.kind === 'text' && c.word === 'reject');
    if (!reject || closing.some((s) => s.start < line.start && line.start < s.end)) continue;
    const answered =
      line.children.some((c) => c.kind === 'if') || line.items.some((i) => asked.has(i.name.text));
    if (!answered) open.push(reject);
  }
  const [first, ...more] = open;
  if (!first) return [];
  const related = more.map((l) => ({ file: job.file.path, span: l.head, message: 'and here' }));
  return [
    finding(
      rejectWithoutConsequence,
      { file: job.file.path, span: first.head, related },
      { count: open.length },
    ),
  ];
}
