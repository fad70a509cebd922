// Tests read as examples: a small text with the expected findings marked in it. A comment line under the line it is
// about, `#   ^^^^ S101 part of the message`, stands for one finding; its carets mark the span. Every finding must be
// marked and every mark found. `--- file: path` lines part several files; a text without one is `procedures/a.bay`.
import { expect } from 'vitest';
import { createLibrary } from '../language/src/analysis.js';
import type { Finding } from '../language/src/diagnostics/define.js';
import { DIAGNOSTICS } from '../language/src/diagnostics/index.js';
import { DEFAULT_SETTINGS, readSettings, type Settings } from '../language/src/settings/index.js';
import { indexLines, offsetAt, positionAt } from '../language/src/text/line-index.js';

/** The only file of a text that names none. */
export const ONLY_FILE = 'procedures/a.bay';

export interface MarkedText {
  /** Texts by path; marks stay in `.bay` files, where they are comments. */
  readonly files: ReadonlyMap<string, string>;
  readonly marks: readonly Mark[];
}

export interface Mark {
  readonly file: string;
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly code: string;
  readonly message: string;
}

export interface SuiteOptions {
  readonly settings?: Settings;
  /** Looks at findings of these codes only, by their beginning (`Q`, `N1`). */
  readonly only?: RegExp;
}

/** Checks a marked text: exactly the marked findings, each at its span, its message holding the marked words. */
export function checkMarked(text: string, options: SuiteOptions = {}): readonly Finding[] {
  const marked = readMarked(text);
  const findings = findingsOf(marked.files, options.settings).filter(
    (f) => options.only?.test(f.code) ?? true,
  );
  const left = [...marked.marks];
  const actual: string[] = [];
  const expected: string[] = marked.marks.map(markText);
  for (const found of findings) {
    const place = placeOf(found, marked.files);
    const at = left.findIndex(
      (m) =>
        m.file === found.file &&
        m.line === place.line &&
        m.start === place.start &&
        m.end === place.end &&
        m.code === found.code,
    );
    const mark = left[at];
    if (!mark)
      actual.push(
        `${found.file}:${place.line + 1}:${place.start + 1}-${place.end + 1} ${found.code} ${found.message}`,
      );
    else {
      left.splice(at, 1);
      actual.push(
        found.message.includes(mark.message) ? markText(mark) : markText({ ...mark, message: found.message }),
      );
    }
  }
  expect(actual.sort()).toEqual(expected.sort());
  return findings;
}

/** All findings of all files, by the usual settings unless the text holds a `baywright.json`. */
export function findingsOf(files: ReadonlyMap<string, string>, settings?: Settings): Finding[] {
  const json = files.get('baywright.json');
  const read = json === undefined ? undefined : readSettings('baywright.json', json, DIAGNOSTICS);
  const library = createLibrary(
    {
      read: (path) => files.get(path),
      list: () => [...files.keys()].filter((path) => path.endsWith('.bay')),
    },
    settings ?? read?.settings ?? DEFAULT_SETTINGS,
  );
  return [
    ...(read?.findings ?? []),
    ...library.host.list().flatMap((path) => library.analyse(path)?.findings ?? []),
  ];
}

export function readMarked(text: string): MarkedText {
  const files = new Map<string, string>();
  const marks: Mark[] = [];
  for (const [path, body] of splitFiles(text)) {
    const kept: string[] = [];
    let above = -1;
    for (const line of body.split('\n')) {
      const found = /^#\s*(\^+) ([A-Z]\d{3})(?: (.*))?$/.exec(line);
      if (!found) {
        above = kept.length;
        kept.push(line);
        continue;
      }
      const start = line.indexOf('^');
      const [, carets = '', code = '', message = ''] = found;
      marks.push({
        file: path,
        line: above,
        start,
        end: start + carets.length,
        code,
        message: message.trim(),
      });
      if (path.endsWith('.bay')) kept.push(line);
    }
    files.set(path, kept.join('\n'));
  }
  return { files, marks };
}

/** Texts after the edits of a fix. */
export function afterFix(
  files: ReadonlyMap<string, string>,
  edits: readonly {
    readonly file: string;
    readonly span: { readonly start: number; readonly end: number };
    readonly text: string;
  }[],
): Map<string, string> {
  const changed = new Map(files);
  for (const { file, span, text } of [...edits].sort((a, b) => b.span.start - a.span.start)) {
    const old = changed.get(file) ?? '';
    changed.set(file, old.slice(0, span.start) + text + old.slice(span.end));
  }
  return changed;
}

/** The offset of the `$0` in a text, which is taken out. */
export function withCursor(text: string): { readonly text: string; readonly offset: number } {
  const offset = text.indexOf('$0');
  if (offset < 0) throw new Error('the text has no $0');
  return { text: text.slice(0, offset) + text.slice(offset + 2), offset };
}

function splitFiles(text: string): [string, string][] {
  const body = text.startsWith('\n') ? text.slice(1) : text;
  if (!/^--- file: /m.test(body)) return [[ONLY_FILE, body]];
  return body
    .split(/^--- file: /m)
    .slice(1)
    .map((part) => {
      const end = part.indexOf('\n');
      return [part.slice(0, end).trim(), part.slice(end + 1)];
    });
}

function placeOf(
  found: Finding,
  files: ReadonlyMap<string, string>,
): { line: number; start: number; end: number } {
  const text = files.get(found.file) ?? '';
  const index = indexLines(text);
  const start = positionAt(index, found.span.start);
  const end = positionAt(index, found.span.end);
  const lineEnd = positionAt(index, offsetAt(index, { line: start.line, column: Number.MAX_SAFE_INTEGER }));
  return {
    line: start.line,
    start: start.column,
    end: end.line === start.line ? end.column : lineEnd.column,
  };
}

function markText({ file, line, start, end, code, message }: Mark): string {
  return `${file}:${line + 1}:${start + 1}-${end + 1} ${code} ${message}`.trim();
}
