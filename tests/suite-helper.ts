// Tests that read as examples: a text with its findings marked in it.
//
//   remove wheel, wheel-nut
// #        ^^^^^ S103 still held by wheel-nut
//
// A comment line marks the text line above it: carets stand under the span, then the code, then a part of the
// message. A span that starts in the first two columns, where the comment's own mark stands, is marked by as many
// `<` as it is long (`# <<<<< G113`) when it starts in column 0, or by `# 1<<< G102` with the column named.
// `--- file: path` starts another file. Findings and marks must match one to one.
import { expect } from 'vitest';
import { createLibrary } from '../language/src/analysis.js';
import { libraryFindings } from '../language/src/checks/library-wide.js';
import type { Finding } from '../language/src/diagnostics/define.js';
import { DIAGNOSTICS } from '../language/src/diagnostics/index.js';
import type { Library } from '../language/src/library.js';
import { newestIssue } from '../language/src/register/issue-folder.js';
import {
  DEFAULT_SETTINGS,
  readSettings,
  type Settings,
  type SettingsReading,
} from '../language/src/settings/index.js';
import { indexLines, positionAt } from '../language/src/text/line-index.js';
import type { TextEdit } from '../language/src/text/span.js';

export interface Mark {
  readonly file: string;
  /** Zero-based. */
  readonly line: number;
  readonly column: number;
  readonly length: number;
  readonly code: string;
  readonly message: string;
}

/**
 * Fails unless the findings that `analyse` gives for the files of the text are those marked in it; without `analyse`,
 * all findings of the library they make. Gives the findings back for a look at their fixes.
 */
export function checkMarked(
  text: string,
  analyse: (files: ReadonlyMap<string, string>) => readonly Finding[] = findingsOf,
): readonly Finding[] {
  const { files, marks } = readMarked(text);
  const findings = analyse(files);
  const actual = findings.map((finding) => markOf(finding, files.get(finding.file) ?? ''));
  const missing: Mark[] = [];
  for (const mark of marks) {
    const at = actual.findIndex((each) => isSamePlace(each, mark) && each.message.includes(mark.message));
    if (at < 0) missing.push(mark);
    else actual.splice(at, 1);
  }
  expect({ found: actual.map(shown) }, `in\n${text}\n`).toEqual({ found: missing.map(shown) });
  return findings;
}

/** All findings of all files, by the usual settings unless given or among the files. */
export function findingsOf(files: ReadonlyMap<string, string>, settings?: Settings): Finding[] {
  const { library, read } = libraryOf(files, settings);
  const found = library.host.list().flatMap((path) => library.analyse(path)?.findings ?? []);
  return [...(read?.findings ?? []), ...found];
}

/** These, and the findings that only the whole library can tell. */
export function libraryWideFindingsOf(files: ReadonlyMap<string, string>, settings?: Settings): Finding[] {
  const { library } = libraryOf(files, settings);
  return [...findingsOf(files, settings), ...libraryFindings(library, library.host.list())];
}

function libraryOf(
  files: ReadonlyMap<string, string>,
  settings?: Settings,
): { readonly library: Library; readonly read: SettingsReading | undefined } {
  const json = files.get('baywright.json');
  const read = json === undefined ? undefined : readSettings('baywright.json', json, DIAGNOSTICS);
  const library = createLibrary(
    {
      read: (path) => files.get(path),
      list: () => [...files.keys()].filter((path) => path.endsWith('.bay') && !path.startsWith('issued/')),
      exists: (path) => files.has(path),
      today: () => '2026-11-25',
      issued: (number) => newestIssue('issued', number, files.keys(), (path) => files.get(path)),
    },
    settings ?? read?.settings ?? DEFAULT_SETTINGS,
  );
  return { library, read };
}

/** The files of a text and the marks in them. Marks stay in `.bay` files, where they are comments. */
export function readMarked(text: string): { files: Map<string, string>; marks: Mark[] } {
  const files = splitFiles(text);
  const marks = [...files].flatMap(([file, content]) => marksIn(file, content));
  for (const [file, content] of files) if (!file.endsWith('.bay')) files.set(file, withoutMarks(content));
  return { files, marks };
}

/** The files after the edits of a fix. */
export function afterFix(
  files: ReadonlyMap<string, string>,
  edits: readonly TextEdit[],
): Map<string, string> {
  const changed = new Map(files);
  for (const { file, span, text } of [...edits].sort((a, b) => b.span.start - a.span.start)) {
    const old = changed.get(file) ?? '';
    changed.set(file, old.slice(0, span.start) + text + old.slice(span.end));
  }
  return changed;
}

/** The files of a text by their path; the first is `main.bay` unless the text names it. */
export function splitFiles(text: string): Map<string, string> {
  const files = new Map<string, string>();
  let name = 'main.bay';
  let lines: string[] = [];
  const close = () => {
    if (lines.some((line) => line.trim() !== '')) files.set(name, lines.join('\n'));
  };
  for (const line of text.split('\n')) {
    const next = /^--- file: (.+)$/.exec(line)?.[1];
    if (next === undefined) lines.push(line);
    else {
      close();
      name = next.trim();
      lines = [];
    }
  }
  close();
  return files;
}

/** The text without its marks. */
export function withoutMarks(text: string): string {
  return text
    .split('\n')
    .filter((line) => !MARK.test(line))
    .join('\n');
}

const MARK = /^\s*#(?:\s+(\^+)|\s*(\d?)(<+))\s+([A-Z]\d{3})(?:\s+(.*))?$/;

/** The marks of a file. Mark lines are comments, so they may stay in the text. */
function marksIn(file: string, text: string): Mark[] {
  const marks: Mark[] = [];
  let marked = 0;
  for (const [i, line] of text.split('\n').entries()) {
    const match = MARK.exec(line);
    if (match === null) {
      marked = i;
      continue;
    }
    const [, carets, column = '', left = '', code = '', message = ''] = match;
    marks.push({
      file,
      line: marked,
      column: carets === undefined ? Number(column) : line.indexOf('^'),
      length: (carets ?? left).length,
      code,
      message: message.trim(),
    });
  }
  return marks;
}

function markOf(finding: Finding, text: string): Mark {
  const index = indexLines(text);
  const { line, column } = positionAt(index, finding.span.start);
  const lineEnd = (index.starts[line + 1] ?? text.length + 1) - 1;
  const length = Math.min(finding.span.end, lineEnd) - finding.span.start;
  return { file: finding.file, line, column, length, code: finding.code, message: finding.message };
}

function isSamePlace(a: Mark, b: Mark): boolean {
  return (
    a.file === b.file &&
    a.line === b.line &&
    a.column === b.column &&
    a.length === b.length &&
    a.code === b.code
  );
}

function shown({ file, line, column, length, code, message }: Mark): string {
  return `${file}:${line + 1}:${column}+${length} ${code} ${message}`;
}
