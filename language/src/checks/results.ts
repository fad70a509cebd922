// G118: branches that ask for a result which no line gives.
import { type Finding, finding } from '../diagnostics/define.js';
import { resultMissing } from '../diagnostics/g118-result-missing.js';
import { type Job, linesOfWork } from '../names/job.js';
import type { IfLine, Line } from '../syntax/tree.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { Check } from './check.js';
import { canRun } from './nested.js';

export const results: Check = ({ job }) => {
  // Deeper than anyone follows, nothing is asked: that it is too deep is told by itself.
  if (!canRun(job)) return [];
  const found: Finding[] = [];
  const look = (lines: readonly Line[], owner: Line | undefined): void => {
    let before = owner;
    let measured: Line | undefined;
    for (const line of lines) {
      if (line.kind === 'if') {
        const problem = line.broken ? undefined : problemOf(job, line, before, measured);
        if (problem) found.push(problem);
      } else if (!isAside(line)) {
        before = line;
        if (line.kind === 'statement' && !line.broken && isMeasuring(line)) measured = line;
      }
      look(line.children, line.kind === 'statement' ? line : undefined);
    }
  };
  for (const section of job.file.work) look(section.children, undefined);
  return found;
};

/** Lines that may stand between a measuring and its `if`. */
function isAside({ kind }: Line): boolean {
  return (
    kind === 'otherwise' || kind === 'text' || kind === 'message' || kind === 'picture' || kind === 'clip'
  );
}

/** `measured` is the last line of the block that gave a result: the one that was meant, likely. */
function problemOf(
  job: Job,
  line: IfLine,
  before: Line | undefined,
  measured: Line | undefined,
): Finding | undefined {
  const { path, tree } = job.file;
  if (line.test === undefined || line.test === 'needed') return undefined;
  const at = { file: path, span: line.code };
  const asked = tree.text.slice(line.code.start, line.code.end);
  if (line.subject) {
    const name = line.subject.text;
    const lines = linesOfWork(job.file).filter((other) => other.start < line.start);
    // What a performed operation measures is not looked for.
    const isGiven = lines.some(
      (other) =>
        other.kind === 'perform' ||
        other.kind === 'unread' ||
        other.broken ||
        (givesResult(other, line) && 'items' in other && other.items.some((item) => item.name.text === name)),
    );
    const isKnown = job.scope.resolve(name) !== undefined;
    return isGiven || !isKnown ? undefined : finding(resultMissing, at, { asked, name });
  }
  if (before && givesResult(before, line)) return undefined;
  const names = measured?.kind === 'statement' ? measured.items.map((item) => item.name.text) : [];
  const span = { start: line.head.end, end: line.head.end };
  const fixes = names.map((name) => ({
    title: `Write \`${asked.replace('if', `if ${name}`)}\``,
    edits: [{ file: path, span, text: ` ${name}` }],
  }));
  return finding(resultMissing, { ...at, fixes }, { asked });
}

function givesResult(line: Line, { test }: IfLine): boolean {
  if (line.broken || line.kind === 'unread' || line.kind === 'perform') return true;
  if (line.kind !== 'statement') return false;
  // Anything that is worked on may be found unfit.
  return test === 'rejected' || isMeasuring(line);
}

/** Whether its verb gives a result; a verb that is not known may. */
function isMeasuring(line: Extract<Line, { kind: 'statement' }>): boolean {
  const verb = VERB_BY_WORD.get(line.verb.text);
  const effects = [...Object.values(verb?.on ?? {}), ...(verb?.alone ? [verb.alone] : [])];
  return verb === undefined || effects.some(({ makes }) => makes.includes('outcome'));
}
