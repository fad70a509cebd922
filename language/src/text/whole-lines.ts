// Lines of a text around a span, for edits that put in or take out lines.
import type { Span } from './span.js';

/** The lines of a block from the start of the first to behind the last line break. */
export function wholeLines(text: string, span: Span): Span {
  const start = text.lastIndexOf('\n', span.start - 1) + 1;
  const end = text.indexOf('\n', Math.max(span.start, span.end - 1));
  return { start, end: end < 0 ? text.length : end + 1 };
}
