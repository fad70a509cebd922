// What `check` reports, in the form that every format is made from: places by line and column, paths as typed.
import { type Finding, indexLines, type LineIndex, rangeOf, type Span } from '@baywright/language';
import type { Checked } from '../check.js';
import type { Shelf } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import type { Report, ReportFinding } from './schema.js';

/** The report of a check, with paths counted from `folder`. */
export function makeReport(checked: Checked, folder: string): Report {
  const locate = locator(folder);
  const findings = checked.found.map(({ shelf, finding }) => reportFinding(finding, shelf, locate));
  const tally = (severity: Finding['severity']) => findings.filter((one) => one.severity === severity).length;
  return {
    findings,
    summary: {
      files: checked.files,
      errors: tally('error'),
      warnings: tally('warning'),
      questions: tally('question'),
      hints: tally('hint'),
      unread: checked.troubles.length,
    },
  };
}

type Locate = (shelf: Shelf, file: string, span: Span) => { file: string; range: ReportFinding['range'] };

function reportFinding(finding: Finding, shelf: Shelf, locate: Locate): ReportFinding {
  return {
    code: finding.code,
    name: finding.name,
    severity: finding.severity,
    message: finding.message,
    ...locate(shelf, finding.file, finding.span),
    related: finding.related.map((one) => ({ message: one.message, ...locate(shelf, one.file, one.span) })),
    fixes: finding.fixes.map(({ title, edits }) => ({
      title,
      edits: edits.map((one) => ({ ...locate(shelf, one.file, one.span), text: one.text })),
    })),
  };
}

/** The source lines of reported files, by path as reported and line from 1. */
export function sourceLines(checked: Checked, folder: string): (file: string, line: number) => string {
  const texts = new Map<string, readonly string[]>();
  for (const { shelf, finding } of checked.found) {
    const file = relativeTo(folder, join(shelf.root, finding.file));
    if (!texts.has(file)) texts.set(file, (shelf.text(finding.file) ?? '').split(/\r\n|\r|\n/));
  }
  return (file, line) => texts.get(file)?.[line - 1] ?? '';
}

/** Turns library paths and offsets into paths and lines; each text is indexed once. */
function locator(folder: string): Locate {
  const indexes = new Map<string, LineIndex>();
  return (shelf, path, span) => {
    const file = relativeTo(folder, join(shelf.root, path));
    const index = indexes.get(file) ?? indexLines(shelf.text(path) ?? '');
    indexes.set(file, index);
    const { start, end } = rangeOf(index, span);
    return {
      file,
      range: {
        start: { line: start.line + 1, column: start.column + 1 },
        end: { line: end.line + 1, column: end.column + 1 },
      },
    };
  };
}
