// Findings for people: place, words, source with carets, what to do. Errors and warnings in full; questions and
// hints one line each, so that a first draft with many holes does not become a wall.
import type { Finding, Severity, Span } from '@baywright/language';
import { positionAt } from '@baywright/language';
import type { Colors } from 'picocolors/types.js';
import type { Checked, Found } from '../check.js';
import type { Shelf } from '../libraries.js';
import { join, relativeTo } from '../paths.js';
import { frame, lineIndexes, printable } from './frame.js';

export interface TextStyle {
  readonly paint: Colors;
  readonly columns: number;
  /** The folder that paths are counted from. */
  readonly folder: string;
  /** The most findings shown; the summary says how many are left out. 0 for all. */
  readonly limit: number;
}

export function textReport(checked: Checked, style: TextStyle): string {
  const shown = style.limit === 0 ? checked.found : checked.found.slice(0, style.limit);
  const left = checked.found.length - shown.length;
  const blocks = shown.map(writer(style));
  if (left > 0) blocks.push(`${left} more not shown; --limit 0 shows all.`);
  if (checked.files === 0 && checked.troubles.length > 0 && blocks.length === 0) return '';
  return `${blocks.map(spaced).join('')}${blocks.length > 0 ? '\n' : ''}${summary(checked, style.paint)}\n`;
}

/** A blank line stands around a block of several lines. */
function spaced(block: string, at: number, all: readonly string[]): string {
  const isTall = block.includes('\n') || all[at - 1]?.includes('\n') === true;
  return `${at > 0 && isTall ? '\n' : ''}${block}\n`;
}

/** One line that says how it stands. */
function summary(checked: Checked, paint: Colors): string {
  const files = plural(checked.files, 'file');
  if (checked.files === 0 && checked.found.length === 0) return 'No procedures here: nothing was checked.';
  const parts = SEVERITIES.flatMap((severity) => {
    const tally = checked.found.filter(({ finding }) => finding.severity === severity).length;
    return tally === 0 ? [] : [colour(severity, paint)(plural(tally, severity))];
  });
  return `${files} checked: ${parts.length === 0 ? paint.green('no findings') : parts.join(', ')}.`;
}

const SEVERITIES = ['error', 'warning', 'question', 'hint'] as const;

export const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

function colour(severity: Severity, paint: Colors): (text: string) => string {
  return { error: paint.red, warning: paint.yellow, question: paint.cyan, hint: paint.dim }[severity];
}

/** Writes findings one after another; line indexes are kept from one to the next. */
function writer(style: TextStyle): (found: Found) => string {
  const { paint } = style;
  const indexOf = lineIndexes();
  const width = Math.max(40, style.columns - 10);
  const place = (shelf: Shelf, path: string, at: Span): string => {
    const { line, column } = positionAt(indexOf(shelf.text(path) ?? ''), at.start);
    return `${relativeTo(style.folder, join(shelf.root, path))}:${line + 1}:${column + 1}`;
  };
  const framed = (shelf: Shelf, path: string, at: Span, mark: (text: string) => string): string[] => {
    const text = shelf.text(path);
    return text === undefined ? [] : frame(text, indexOf(text), at, { paint, mark, width });
  };
  return ({ shelf, finding }) => {
    const mark = colour(finding.severity, paint);
    const head = `${place(shelf, finding.file, finding.span)} ${mark(`${finding.severity} ${finding.code}`)} ${paint.bold(printable(finding.message))}`;
    if (finding.severity === 'question' || finding.severity === 'hint') return head;
    const lines = [head, ...framed(shelf, finding.file, finding.span, mark)];
    for (const related of finding.related) {
      const where = related.file === finding.file ? '' : ` (${place(shelf, related.file, related.span)})`;
      lines.push(
        `${INDENT}${related.message}${where}:`,
        ...framed(shelf, related.file, related.span, paint.blue),
      );
    }
    return [...lines, ...advice(finding, paint)].join('\n');
  };
}

const INDENT = '         ';

function advice(finding: Finding, paint: Colors): string[] {
  const lines: string[] = [];
  if (finding.variants !== undefined) lines.push(`${INDENT}Holds on: ${finding.variants}`);
  if (finding.advice !== undefined) lines.push(`${INDENT}Do: ${finding.advice}`);
  for (const fix of finding.fixes) {
    lines.push(`${INDENT}${paint.green('Fix')}${fix.preferred ? ' (--fix)' : ''}: ${fix.title}`);
  }
  return lines;
}
