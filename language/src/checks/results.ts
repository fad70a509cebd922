// G118: branches that ask for a result which no line gives.
import { type Finding, finding } from '../diagnostics/define.js';
import { resultMissing } from '../diagnostics/g118-result-missing.js';
import { type Job, linesOfWork } from '../names/job.js';
import type { IfLine, Line } from '../syntax/tree.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { Check } from './check.js';

export const results: Check = ({ job }) => {
  const found: Finding[] = [];
  const look = (lines: readonly Line[], owner: Line | undefined): void => {
    let before = owner;
    for (const line of lines) {
      if (line.kind === 'if') {
        const problem = line.broken ? undefined : problemOf(job, line, before);
        if (problem) found.push(problem);
      } else if (!isAside(line)) before = line;
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

function problemOf(job: Job, line: IfLine, before: Line | undefined): Finding | undefined {
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
  return before && givesResult(before, line) ? undefined : finding(resultMissing, at, { asked });
}

function givesResult(line: Line, { test }: IfLine): boolean {
  if (line.broken || line.kind === 'unread' || line.kind === 'perform') return true;
  if (line.kind !== 'statement') return false;
  // Anything that is worked on may be found unfit.
  if (test === 'rejected') return true;
  const verb = VERB_BY_WORD.get(line.verb.text);
  const effects = [...Object.values(verb?.on ?? {}), ...(verb?.alone ? [verb.alone] : [])];
  return verb === undefined || effects.some(({ makes }) => makes.includes('outcome'));
}
