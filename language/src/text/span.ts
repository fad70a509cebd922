// Places in a text: half-open ranges of UTF-16 offsets, and the edits that fixes and the formatter make.

/** A half-open range of UTF-16 offsets into one file's text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A span in a named file. `file` is the library path with forward slashes. */
export interface Place {
  readonly file: string;
  readonly span: Span;
}

/** Replaces the text at `span` in `file` by `text`; an empty span inserts. */
export interface TextEdit {
  readonly file: string;
  readonly span: Span;
  readonly text: string;
}

export function span(start: number, end: number): Span {
  return { start, end };
}

/** The smallest span that covers both. */
export function cover(a: Span, b: Span): Span {
  return { start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) };
}

/** Whether the offset lies in the span; the end counts, so that a cursor behind a word finds it. */
export function touches(at: Span, offset: number): boolean {
  return offset >= at.start && offset <= at.end;
}
