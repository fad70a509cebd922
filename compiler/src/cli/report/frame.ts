// A piece of source with a line of carets under the place that a finding is about.
import type { Span } from '@baywright/language';
import { indexLines, type LineIndex, positionAt } from '@baywright/language';
import { eastAsianWidth } from 'get-east-asian-width';
import type { Colors } from 'picocolors/types.js';

export interface FrameStyle {
  readonly paint: Colors;
  /** Colour of the carets. */
  readonly mark: (text: string) => string;
  /** Characters across that the source may take. */
  readonly width: number;
}

/**
 * The line that a span starts on, numbered, with carets under the span. A span over several lines is marked to the
 * end of its first. A line too wide is cut around the span. Wide characters and tabs keep the carets in place.
 */
export function frame(text: string, index: LineIndex, at: Span, style: FrameStyle): string[] {
  const start = positionAt(index, at.start);
  const lineStart = index.starts[start.line] ?? 0;
  const line = text.slice(lineStart, endOfLine(text, lineStart, index.starts[start.line + 1]));
  const from = start.column;
  const to = Math.max(from + 1, Math.min(at.end - lineStart, line.length));
  const shown = cut(line, from, to, style.width);
  const number = String(start.line + 1).padStart(NUMBER_WIDTH);
  const gap = ' '.repeat(NUMBER_WIDTH);
  const { dim } = style.paint;
  const pad = shown.line.slice(0, shown.from).replace(/[^\t]+/g, (piece) => ' '.repeat(widthOf(piece)));
  const carets = '^'.repeat(Math.max(1, widthOf(shown.line.slice(shown.from, shown.to))));
  return [`${dim(`${number} |`)} ${printable(shown.line)}`, `${dim(`${gap} |`)} ${pad}${style.mark(carets)}`];
}

const NUMBER_WIDTH = 6;

/** Columns that a terminal gives a text: two for wide characters, none for marks set on others. */
function widthOf(text: string): number {
  let width = 0;
  for (const character of text) {
    if (!/[\p{M}\p{Cf}]/u.test(character)) width += eastAsianWidth(character.codePointAt(0) ?? 0);
  }
  return width;
}

function endOfLine(text: string, start: number, next: number | undefined): number {
  let end = next ?? text.length;
  while (end > start && (text[end - 1] === '\n' || text[end - 1] === '\r')) end--;
  return end;
}

/** The part of a line around a span that fits the width, with … where something was left out. */
function cut(
  line: string,
  from: number,
  to: number,
  width: number,
): { line: string; from: number; to: number } {
  if (line.length <= width) return { line, from, to };
  const lead = Math.max(0, Math.min(from - Math.floor(width / 4), line.length - width));
  const piece = line.slice(lead, lead + width);
  const before = lead > 0 ? '…' : '';
  const after = lead + width < line.length ? '…' : '';
  const shift = before.length - lead;
  return { line: `${before}${piece}${after}`, from: from + shift, to: Math.min(to, lead + width) + shift };
}

/** Control characters as a visible sign, so that a damaged file cannot steer the terminal. */
export const printable = (line: string): string =>
  line.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/g, '\uFFFD');

/** Line indexes by text, made once each. */
export function lineIndexes(): (text: string) => LineIndex {
  const known = new Map<string, LineIndex>();
  return (text) => {
    const index = known.get(text) ?? indexLines(text);
    known.set(text, index);
    return index;
  };
}
