// G118, Q123: branches that ask for a result which no line gives, or for a side that its limit does not have.
import { type Finding, finding } from '../diagnostics/define.js';
import { resultMissing } from '../diagnostics/g118-result-missing.js';
import { limitSideMissing } from '../diagnostics/q123-limit-side-missing.js';
import { type Job, linesOfWork } from '../names/job.js';
import { clausesOf, hasClause, type Thing } from '../names/model.js';
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
        else found.push(...sideFindings(job, line, before));
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

/** The side of its limit that a test is about. */
const SIDES: Readonly<Record<string, 'lower' | 'upper'>> = { below: 'lower', above: 'upper' };

function sideFindings(job: Job, line: IfLine, before: Line | undefined): Finding[] {
  const { test } = line;
  if (line.broken || test === undefined || test === 'needed' || test === 'rejected') return [];
  const names = line.subject
    ? [line.subject.text]
    : before?.kind === 'statement'
      ? before.items.map((item) => item.name.text)
      : [];
  return names.flatMap((name) => {
    const thing = job.scope.resolve(name);
    if (thing?.kind !== 'limit') return [];
    const side = SIDES[test];
    const isThere =
      side === undefined ? hasSide(thing, 'lower') || hasSide(thing, 'upper') : hasSide(thing, side);
    if (isThere || isUnread(thing)) return [];
    const isBare = !hasSide(thing, 'lower') && !hasSide(thing, 'upper');
    const found = finding(
      limitSideMissing,
      { file: job.file.path, span: line.code },
      { name, side: isBare ? undefined : side },
    );
    // What is not known yet is open in a draft, not wrong.
    return isBare ? [{ ...found, severity: 'question' }] : [found];
  });
}

/** A line below its entry could not be read: it may be the figure. */
const isUnread = ({ line }: Thing): boolean =>
  line?.kind === 'entry' && line.children.some((child) => child.broken || child.kind === 'unread');

/** A value alone, with a tolerance or a range, has both sides. */
const hasSide = (thing: Thing, side: 'lower' | 'upper'): boolean =>
  clausesOf(thing, 'bare').some(({ clause }) => clause.spec !== undefined) ||
  hasClause(thing, side === 'lower' ? 'at least' : 'at most');

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
