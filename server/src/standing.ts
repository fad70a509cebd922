// What of an earlier analysis still stands after edits: where its text differs from the new one, its findings at their
// new places, and whether the work up to a line is still what it was. Answers just after a key press rest on it.
import {
  type Analysis,
  difference,
  type Finding,
  type Line,
  SECTION_BY_WORD,
  type Span,
  type Tree,
  walkLines,
} from '@baywright/language';

/** Findings of an earlier text at their places in the new one; those where the text was edited are left out. */
export function movedFindings(
  findings: readonly Finding[],
  path: string,
  before: string,
  after: string,
): Finding[] {
  const { start, oldEnd, newEnd } = difference(before, after);
  const place = (span: Span): Span | undefined => {
    if (span.end <= start) return span;
    return span.start >= oldEnd
      ? { start: span.start + newEnd - oldEnd, end: span.end + newEnd - oldEnd }
      : undefined;
  };
  return findings.flatMap((f) => {
    const span = f.file === path ? place(f.span) : undefined;
    return span ? [{ ...f, span, related: [] }] : [];
  });
}

/**
 * The offset in an earlier analysis that stands for the start of a line now: the work above it is the same. Undefined
 * when something that the state of the vehicle there may depend on was edited.
 */
export function sameWorkAbove(
  earlier: Pick<Analysis, 'text' | 'tree'>,
  now: Tree,
  lineStart: number,
): number | undefined {
  if (earlier.text === now.text) return lineStart;
  const { start, oldEnd, newEnd } = difference(earlier.text, now.text);
  const before = touched(earlier.tree, wholeLines(earlier.text, start, oldEnd));
  const after = touched(now, wholeLines(now.text, start, newEnd));
  const above = after.filter(({ line }) => line.start < lineStart && line.code.end < lineStart);
  const isSame = above.every(({ line }, i) => said(now, line) === said(earlier.tree, before[i]?.line));
  if (!isSame || above.length > before.length) return undefined;
  // What is written below does not reach back up, unless it declares something.
  const lineEnd = endOfLine(now.text, lineStart);
  const below = [...before.slice(above.length), ...after.slice(above.length)];
  const isOwnLine =
    start >= lineStart && newEnd <= lineEnd && !/[\r\n]/.test(earlier.text.slice(start, oldEnd));
  const own = (line: Line): boolean => line.start >= lineStart && line.start <= lineEnd;
  if (!isOwnLine && !below.every(({ line, inWork }) => inWork || own(line))) return undefined;
  if (lineStart <= start) return lineStart;
  if (lineStart >= newEnd && above.length === before.length) return lineStart - newEnd + oldEnd;
  const next = before[above.length];
  return next ? next.line.start : Math.max(oldEnd, (before.at(-1)?.line.start ?? start) + 1);
}

interface Touched {
  readonly line: Line;
  /** Work that nothing performs from elsewhere, and no heading. */
  readonly inWork: boolean;
}

function touched(tree: Tree, at: Span): Touched[] {
  const found: Touched[] = [];
  const works = new Set<Line>();
  walkLines(tree, (line, parent) => {
    if (line.end < at.start || line.start > at.end) return false;
    const inWork = parent !== undefined && works.has(parent) && line.kind !== 'operation';
    if (inWork || (line.kind === 'section' && SECTION_BY_WORD.get(line.word)?.work)) works.add(line);
    if (line.code.end >= at.start) found.push({ line, inWork });
    return undefined;
  });
  return found;
}

function said(tree: Tree, line: Line | undefined): string | undefined {
  return line && `${line.depth} ${line.kind} ${tree.text.slice(line.code.start, line.code.end)}`;
}

function wholeLines(text: string, start: number, end: number): Span {
  return { start: text.lastIndexOf('\n', start - 1) + 1, end: endOfLine(text, end) };
}

function endOfLine(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  return end < 0 ? text.length : end;
}
