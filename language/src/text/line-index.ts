// Offsets to lines and columns and back. Lines end at LF, CRLF or a lone CR.
import type { Span } from './span.js';

/** A zero-based line and UTF-16 column. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** The offsets at which the lines of a text start. */
export interface LineIndex {
  readonly starts: readonly number[];
  readonly length: number;
}

export function indexLines(text: string): LineIndex {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 10) starts.push(i + 1);
    else if (c === 13 && text.charCodeAt(i + 1) !== 10) starts.push(i + 1);
  }
  return { starts, length: text.length };
}

/** The position of an offset; offsets outside the text are moved to its nearest end. */
export function positionAt(index: LineIndex, offset: number): Position {
  const at = Math.max(0, Math.min(offset, index.length));
  let low = 0;
  let high = index.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((index.starts[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  return { line: low, column: at - (index.starts[low] ?? 0) };
}

/** The offset of a position; lines and columns outside the text are moved to its nearest place. */
export function offsetAt(index: LineIndex, position: Position): number {
  if (position.line < 0) return 0;
  const start = index.starts[position.line];
  if (start === undefined) return index.length;
  const next = index.starts[position.line + 1] ?? index.length + 1;
  return Math.max(start, Math.min(start + position.column, next - 1));
}

/** Start and end positions of a span. */
export function rangeOf(index: LineIndex, at: Span): { start: Position; end: Position } {
  return { start: positionAt(index, at.start), end: positionAt(index, at.end) };
}
