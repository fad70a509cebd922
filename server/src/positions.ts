// Positions of the protocol and offsets of the language, in the encoding agreed with the client. Positions outside
// the text are moved to its nearest place, so that no request can fail for being out of date.
import { indexLines, type LineIndex, offsetAt, positionAt, type Span } from '@baywright/language';
import type { Position, Range } from 'vscode-languageserver';

export type Encoding = 'utf-16' | 'utf-8';

export interface Positions {
  readonly index: LineIndex;
  offset(position: Position): number;
  position(offset: number): Position;
  range(span: Span): Range;
  span(range: Range): Span;
  /** Offset at which a line starts. */
  lineStart(line: number): number;
}

export function positionsOf(text: string, encoding: Encoding): Positions {
  const index = indexLines(text);
  const position = (offset: number): Position => {
    const { line, column } = positionAt(index, offset);
    if (encoding === 'utf-16') return { line, character: column };
    const start = index.starts[line] ?? 0;
    return { line, character: bytesIn(text, start, start + column) };
  };
  const offset = (at: Position): number => {
    const line = whole(at.line);
    const character = whole(at.character);
    if (encoding === 'utf-16')
      return beforeLineEnd(text, index, line, offsetAt(index, { line, column: character }));
    const start = offsetAt(index, { line, column: 0 });
    return beforeLineEnd(
      text,
      index,
      line,
      offsetAt(index, { line, column: unitsFor(text, start, character) }),
    );
  };
  return {
    index,
    offset,
    position,
    range: (span) => ({ start: position(span.start), end: position(span.end) }),
    span: (range) => {
      const start = offset(range.start);
      const end = offset(range.end);
      return start <= end ? { start, end } : { start: end, end: start };
    },
    lineStart: (line) => offsetAt(index, { line: whole(line), column: 0 }),
  };
}

/** Clients are known to send -1, fractions and numbers beyond the text. */
function whole(n: number): number {
  return Number.isFinite(n) ? Math.max(0, Math.floor(n)) : 0;
}

/** A column past the end of its line means the end of the line, before its line break. */
function beforeLineEnd(text: string, index: LineIndex, line: number, offset: number): number {
  const start = index.starts[line];
  if (start === undefined) return offset;
  const next = index.starts[line + 1];
  let end = next ?? text.length;
  if (next !== undefined) end -= text.startsWith('\r\n', end - 2) ? 2 : 1;
  return Math.min(offset, Math.max(start, end));
}

function bytesIn(text: string, from: number, to: number): number {
  let bytes = 0;
  for (let i = from; i < to; i++) bytes += bytesOf(text.charCodeAt(i));
  return bytes;
}

function unitsFor(text: string, from: number, bytes: number): number {
  let left = bytes;
  let i = from;
  while (left > 0 && i < text.length) {
    left -= bytesOf(text.charCodeAt(i));
    i++;
  }
  return i - from;
}

/** UTF-8 bytes of one UTF-16 unit; the halves of a pair share four. */
function bytesOf(unit: number): number {
  if (unit < 0x80) return 1;
  if (unit < 0x800 || (unit >= 0xd800 && unit <= 0xdfff)) return 2;
  return 3;
}
