// A slip in the code of a line stays on that line. Whatever is deleted or put into the code, as long as indent, colon
// and trailing comma stay where they are:
// - every finding is on the damaged line, and there is at most one,
// - lines outside the line's own block read as before,
// - lines inside it read as before or, when the line can no longer be told, are left unread.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { meaningOf } from '../../language/src/format/same-meaning.js';
import { type Line, parse, type Tree, walkLines } from '../../language/src/syntax/index.js';
import { colonIn } from '../../language/src/syntax/physical.js';
import { indexLines, positionAt } from '../../language/src/text/line-index.js';

const folder = new URL('../fixtures/design/', import.meta.url);
// One file of each sort: the others have no other kinds of line.
const fixtures = [
  'catalogue/corrow-y40.bay',
  'house/general.bay',
  'procedures/HC-17-head-cover.bay',
  'procedures/CH-08-clutch-hydraulics.bay',
];
const PUT = ['x', '7', '"', ';', ' ', '?', '-'];

describe.each(fixtures)('%s', (name) => {
  const text = readFileSync(new URL(name, folder), 'utf8');

  test('damage to code stays on its line', () => {
    const before = rowsOf(parse(text, name).tree);
    for (const { at, damaged, line } of damages(text)) {
      if (!before.has(line)) continue;
      const where = `${JSON.stringify(damaged.slice(at - 10, at + 10))} on line ${line + 1}`;
      const { tree, findings } = parse(damaged, name);
      const index = indexLines(damaged);
      expect(
        findings.map((finding) => positionAt(index, finding.span.start).line).filter((each) => each !== line),
        where,
      ).toEqual([]);
      expect(findings.length, where).toBeLessThanOrEqual(1);
      const after = rowsOf(tree);
      const own = after.get(line);
      for (const [number, row] of before) {
        if (number === line) continue;
        const now = after.get(number);
        const isInBlock = own !== undefined && number > line && number <= own.blockEnd;
        if (isInBlock && now?.row.includes(' unread ')) continue;
        expect(now?.row, where).toBe(row.row);
      }
    }
  });
});

/** Every second character of code deleted, and replaced, by another character each time. */
function* damages(text: string): Generator<{ at: number; damaged: string; line: number }> {
  let start = 0;
  let turn = 0;
  for (const [line, written] of text.split('\n').entries()) {
    const indent = written.length - written.trimStart().length;
    const colon = colonIn(written, indent, written.length);
    const end = colon < 0 ? written.length : colon;
    for (let column = indent + (line % 2); column < end && !/^\s*#/.test(written); column += 2) {
      for (const put of ['', PUT[turn++ % PUT.length] ?? '']) {
        const wanted = written.slice(0, column) + put + written.slice(column + 1);
        if (wanted === written || !keepsShape(written, wanted, colon, put.length - 1)) continue;
        yield {
          at: start + column,
          damaged: text.slice(0, start) + wanted + text.slice(start + written.length),
          line,
        };
      }
    }
    start += written.length + 1;
  }
}

/** Whether indent, colon and a comma at the end of the code are where they were. */
function keepsShape(before: string, after: string, colon: number, shift: number): boolean {
  const indent = before.length - before.trimStart().length;
  if (after.length - after.trimStart().length !== indent || after.trim() === '') return false;
  const now = colonIn(after, indent, after.length);
  if (now !== (colon < 0 ? -1 : colon + shift)) return false;
  const endsInComma = (text: string, at: number) =>
    (at < 0 ? text : text.slice(0, at)).trimEnd().endsWith(',');
  return endsInComma(before, colon) === endsInComma(after, now);
}

interface Row {
  readonly row: string;
  /** The last line of the block below. */
  readonly blockEnd: number;
}

function rowsOf(tree: Tree): Map<number, Row> {
  const rows = new Map<number, Row>();
  const meanings = meaningOf(tree);
  const index = indexLines(tree.text);
  let i = 0;
  walkLines(tree, (line: Line) => {
    rows.set(line.firstLine, { row: meanings[i] ?? '', blockEnd: positionAt(index, line.end).line });
    i += 1;
    return undefined;
  });
  return rows;
}
