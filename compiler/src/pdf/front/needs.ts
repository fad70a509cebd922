// The list of needs in print: of the first page, a table whose groups say their kind once, and the pull sheet.
import type { BlockOf, NeedRow } from '../../document/blocks.js';
import type { Prose } from '../../document/inline.js';
import { optional, proseCode } from '../prose.js';
import { HAND, WIDTH } from '../steps/frame.js';
import { widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { type Argument, call, type Raw, raw } from '../typst-code.js';
import { proseHigh, rowHigh, TWO_LINES, textHigh, USUAL_GAP } from './items.js';
import { itemSection, type Section } from './sections.js';

/** `inset` is what stands over and under a line of the list. */
export function needSections(block: BlockOf<'needs'>, inset: number): readonly Section[] {
  if (block.layout === 'list') return [listSection(block, inset)];
  // A sheet of its own, which is as long as it is.
  return block.groups.map(({ title, rows }) => {
    const code = call('pull', [rows.map((row) => needRow(row))]);
    return itemSection({ above: 2, below: USUAL_GAP, height: 0, code }, title);
  });
}

const STYLE = { size: 10, tabular: true };
const KIND_STYLE = { size: 9.5, tabular: true };
/** Columns of the kind at least, and the tick; what stands beside a text in each. */
const [KIND, TICK] = [29, 6.5];
/** What it is for, as wide as makes the list lowest: the first of those that are alike. */
const FOR = [61, 70, 52] as const;
const BESIDE = 3;
/** The kind stands lower than the edge of its cell, as high as the words beside it. */
const LOWER = 0.75;

/** Over and under more than one line: letters reach lower than their lines. */
const tallInset = (inset: number): number => Math.max(inset, Math.min(1.1, inset + 0.4));

interface Line {
  readonly row: NeedRow;
  readonly kind: string;
  readonly high: number;
  readonly tall: boolean;
}

function listSection({ title, groups }: BlockOf<'needs'>, inset: number): Section {
  // A word of the kind is never parted: long ones are usual in German.
  const words = groups.flatMap((group) => group.title.split(' '));
  const kindWide = Math.max(
    KIND,
    ...words.map((word) => widthOf(word, '400Regular', KIND_STYLE.size) + BESIDE + 0.2),
  );
  const at = (forWide: number) => {
    const what = WIDTH - kindWide - TICK - forWide;
    const lines = groups.flatMap(({ title: kind, rows }) =>
      rows.map((row) => lineOf(row, kind, what, forWide, inset)),
    );
    return { what, forWide, lines, all: sum(lines.map(({ high }) => high)) };
  };
  const [usual, ...others] = FOR;
  const { what, forWide, lines } = others
    .map(at)
    .reduce((best, one) => (one.all < best.all ? one : best), at(usual));
  const head = rowHigh([textHigh('X', STYLE, forWide)], inset);
  const heightsOf = (from: number, to: number): readonly number[] => {
    const runs = runsOfKind(lines.slice(from, to));
    return runs.flatMap((run) => {
      const high = run.map((line) => line.high);
      // What its rows lack for the words of the kind, the last of them gets.
      const lack = kindHigh(run[0]?.kind ?? '', kindWide, inset) - sum(high);
      return lack > 0 ? high.map((one, i) => one + (i === high.length - 1 ? lack : 0)) : high;
    });
  };
  return {
    title,
    above: 2,
    below: USUAL_GAP,
    rows: lines.length,
    high: (from, to) => head + sum(heightsOf(from, to)),
    code: (from, to) =>
      call('needs', [
        [kindWide, TICK, what, forWide].map(millimetres),
        [head, ...heightsOf(from, to)].map(millimetres),
        millimetres(inset),
        runsOfKind(lines.slice(from, to)).map((run) => ({
          kind: run[0]?.kind ?? '',
          rows: run.map(({ row, tall }) => needRow(row, tall)),
        })),
      ]),
  };
}

function lineOf(row: NeedRow, kind: string, what: number, forWide: number, inset: number): Line {
  const cells = [
    3.8,
    proseHigh(row.what, STYLE, what - BESIDE),
    row.blank === undefined
      ? proseHigh(row.for, STYLE, forWide - BESIDE)
      : writeIn(row, row.blank, forWide - BESIDE),
  ];
  const tall = Math.max(...cells) >= TWO_LINES;
  return { row, kind, high: rowHigh(cells, tall ? tallInset(inset) : inset), tall };
}

/** Lines of one kind that follow each other: on a page they say it once. */
function runsOfKind(lines: readonly Line[]): readonly (readonly Line[])[] {
  const runs: Line[][] = [];
  for (const line of lines) {
    const last = runs.at(-1);
    if (last?.[0]?.kind === line.kind) last.push(line);
    else runs.push([line]);
  }
  return runs;
}

const kindHigh = (kind: string, width: number, inset: number): number =>
  rowHigh([textHigh(kind, KIND_STYLE, width - BESIDE) + LOWER], inset);

const sum = (heights: readonly number[]): number => heights.reduce((all, one) => all + one, 0);

const millimetres = (length: number): Raw => raw(`${length}mm`);

/** `tall`: something in the row takes more than one line. */
const needRow = (row: NeedRow, tall = false): Argument => ({
  what: proseCode(row.what),
  use: optional(row.for),
  tall,
  number: row.number ?? '',
  amount: proseCode(row.amount ?? []),
  blank: row.blank,
  revised: row.revised ?? false,
});

/** A blank of 30 mm in the line makes it as high as a hand needs. */
function writeIn(row: NeedRow, blank: string, width: number): number {
  const said: Prose = [...row.for, { kind: 'text', text: ` ${blank} ` }];
  const { count } = fill(proseRuns(said, STYLE), width, 31);
  return (count - 1) * 4.2 + HAND;
}
