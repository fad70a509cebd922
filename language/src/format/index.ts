// The formatter. It settles blanks, indent, commas, the form of quantities and the place of `when`; it keeps comments,
// paragraphs, the writer's line breaks and every line that has a finding of its own. What a file means never changes:
// see `sameMeaning`.

import { parse } from '../syntax/index.js';
import type { Span, TextEdit } from '../text/span.js';
import { type Group, groupsOf } from './groups.js';

export { sameMeaning } from './same-meaning.js';

export interface Formatted {
  readonly text: string;
  /** The edits that lead there, of changed lines only, in order. */
  readonly edits: readonly TextEdit[];
}

const MARK = '\uFEFF';

/** Formats a whole file. Idempotent. */
export function format(text: string, file: string): Formatted {
  if (hasMixedLineEnds(text)) {
    const wanted = format(text.replace(/\r\n?/g, '\n'), file).text;
    return { text: wanted, edits: [{ file, span: { start: 0, end: text.length }, text: wanted }] };
  }
  const edits = editsOf(text, file, groupsOf(parse(text, file).tree));
  const formatted = applyAll(text, edits);
  // A stray byte order mark that came to stand first would be none of the text any more: such a file stays as it is.
  if (formatted.startsWith(MARK) && !text.startsWith(MARK)) return { text, edits: [] };
  return { text: formatted, edits };
}

/** The edits of `format` on the lines that a span touches. */
export function formatRange(text: string, file: string, range: Span): readonly TextEdit[] {
  if (hasMixedLineEnds(text)) return [];
  const groups = groupsOf(parse(text, file).tree).filter(
    ({ start, end }) => start <= range.end && end >= range.start,
  );
  return editsOf(text, file, groups);
}

/** One edit for each changed line; lines that come or go are edited as one with their line end. */
function editsOf(text: string, file: string, groups: readonly Group[]): TextEdit[] {
  const edits: TextEdit[] = [];
  for (const { lines, written } of groups) {
    if (written.length === lines.length) {
      for (const [i, line] of lines.entries()) {
        const wanted = written[i] ?? '';
        if (text.slice(line.start, line.end) !== wanted)
          edits.push({ file, span: { start: line.start, end: line.end }, text: wanted });
      }
      continue;
    }
    const first = lines[0];
    const last = lines[lines.length - 1];
    if (first === undefined || last === undefined) continue;
    const lineEnd = lineEndOf(text);
    if (written.length === 0) edits.push({ file, span: goneSpan(text, first.start, last.end), text: '' });
    else edits.push({ file, span: { start: first.start, end: last.end }, text: written.join(lineEnd) });
  }
  return edits;
}

/** A line that goes takes its line end with it; the last line of a file the one before it. */
function goneSpan(text: string, start: number, end: number): Span {
  if (end < text.length) return { start, end: end + (text.startsWith('\r\n', end) ? 2 : 1) };
  return { start, end };
}

/** Lone carriage returns beside other line ends: a line end put in could make one of two. All become LF. */
function hasMixedLineEnds(text: string): boolean {
  return /\r(?!\n)/.test(text) && text.includes('\n');
}

/** The line end that the file uses. */
function lineEndOf(text: string): string {
  return /\r\n|\r|\n/.exec(text)?.[0] ?? '\n';
}

function applyAll(text: string, edits: readonly TextEdit[]): string {
  const parts: string[] = [];
  let at = 0;
  for (const { span, text: wanted } of edits) {
    parts.push(text.slice(at, span.start), wanted);
    at = span.end;
  }
  parts.push(text.slice(at));
  return parts.join('');
}
