// Every kind of finding has a page, and its page is true: the wrong example gives just that finding at the marked
// span, the right one none, and the fix that may be applied unasked turns a wrong file into one without findings.
// Every fix writes as the formatter does.
import { describe, expect, test } from 'vitest';
import { DIAGNOSTICS } from '../language/src/diagnostics/index.js';
import { format } from '../language/src/format/index.js';
import {
  afterFix,
  checkMarked,
  findingsOf,
  libraryWideFindingsOf,
  readMarked,
  splitFiles,
  withoutMarks,
} from './suite-helper.js';

test('no code and no name stands twice', () => {
  const codes = DIAGNOSTICS.map((each) => each.code);
  const names = DIAGNOSTICS.map((each) => each.name);
  expect(codes.filter((code, i) => codes.indexOf(code) !== i)).toEqual([]);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

/** Findings that only the whole library can tell are not among those of a file. */
const analyseFor = (code: string) => (code.startsWith('R2') ? libraryWideFindingsOf : findingsOf);

describe.each(DIAGNOSTICS.map((def) => [`${def.code} ${def.name}`, def] as const))('%s', (_title, def) => {
  test('has a page', () => {
    expect(def.why.trim().length).toBeGreaterThan(40);
    expect(readMarked(def.wrong).marks.map((mark) => mark.code)).toEqual([def.code]);
    expect(readMarked(def.right).marks).toEqual([]);
  });

  test('wrong example gives this finding alone', () => {
    const found = checkMarked(def.wrong, analyseFor(def.code));
    for (const fix of found.flatMap((each) => each.fixes.filter(({ preferred }) => preferred))) {
      const mended = afterFix(readMarked(def.wrong).files, fix.edits);
      expect(analyseFor(def.code)(mended).map((each) => `${each.code} ${each.message}`)).toEqual([]);
    }
  });

  test('every fix leaves nothing for the formatter to do', () => {
    const files = new Map(
      [...splitFiles(withoutMarks(def.wrong))].map(([path, text]) => [path, formatted(path, text)]),
    );
    for (const { title, edits } of analyseFor(def.code)(files).flatMap((each) => each.fixes)) {
      const mended = afterFix(files, edits);
      const wanted = new Map([...mended].map(([path, text]) => [path, formatted(path, text)]));
      expect(mended, title).toEqual(wanted);
    }
  });

  test('right example gives none', () => {
    checkMarked(def.right, analyseFor(def.code));
  });
});

const formatted = (path: string, text: string): string =>
  path.endsWith('.bay') ? format(text, path).text : text;
