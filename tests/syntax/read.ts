// The only code of the syntax tests that calls the parser's door.
import type { Finding, Fix } from '../../language/src/diagnostics/define.js';
import { dump, parse } from '../../language/src/syntax/index.js';

/** The findings of every file, read alone. */
export function findingsOf(files: ReadonlyMap<string, string>): Finding[] {
  return [...files].flatMap(([file, text]) => parse(text, file).findings);
}

/** What was read, as rows. */
export function dumpOf(text: string): string {
  return dump(parse(text, 'main.bay').tree);
}

export function applyFix(text: string, fix: Fix): string {
  const edits = [...fix.edits].sort((a, b) => b.span.start - a.span.start);
  return edits.reduce(
    (done, { span, text: wanted }) => done.slice(0, span.start) + wanted + done.slice(span.end),
    text,
  );
}
