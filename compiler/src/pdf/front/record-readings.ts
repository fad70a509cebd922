// Readings and inspections of the record: columns as narrow as their words allow, blanks for several places beside each
// other where there is room.
import type { BlockOf } from '../../document/blocks.js';
import { text } from '../../document/inline.js';
import type { PrintContext } from '../context.js';
import { proseCode } from '../prose.js';
import { WIDTH } from '../steps/frame.js';
import { widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { AT, besideText, headed, type RecordLook, tablePart } from './record-table.js';
import type { Section } from './sections.js';

export function readingsPart(
  { rows }: BlockOf<'record-readings'>,
  { words }: PrintContext,
  look: RecordLook,
): Section {
  const { widths, inRow } = readingColumns(rows, [words.pass, words.fail], look.size);
  const [, what, limit, found] = widths;
  return tablePart(words.recordReadings, look, {
    name: 'readings',
    widths,
    heads: [words.at, words.what, words.limit, words.found, words.pass, words.fail],
    rows: rows.map((row) => ({
      code: () => ({
        number: row.number,
        what: proseCode([text(row.what)]),
        limit: proseCode(row.limit),
        unit: row.unit ?? '',
        places: row.places,
        'in-row': Math.min(row.places, inRow),
        inspected: isInspected(row),
      }),
      texts: [
        [[text(row.what)], what],
        [row.limit, isInspected(row) ? limit + found : limit],
      ],
      least: row.places > 1 ? Math.ceil(row.places / inRow) * (BLANK + BLANKS_APART) - BLANKS_APART : TICK,
      ticked: isInspected(row),
    })),
  });
}

type Reading = BlockOf<'record-readings'>['rows'][number];

/** Nothing is measured: what is rejected may take the room of what was found. */
const isInspected = ({ reading, places }: Reading): boolean => reading === undefined && places === 1;

/** Heights of a tick, of a blank for one of several places, and what stands between two of them. */
const [TICK, BLANK, BLANKS_APART] = [5, 7.2, 1.2];
/** Width of a blank with its number, and what stands between two and before their unit. */
const [NUMBERED, BESIDE_BLANK] = [15.2, 1.5];
/** Narrower, and the names of what is measured take a line for each word; and with this they take few. */
const [LEAST_WHAT, ENOUGH_WHAT] = [36, 52];
const SPARE = 16;

type Six = readonly [number, number, number, number, number, number];

function readingColumns(
  rows: readonly Reading[],
  ticks: readonly string[],
  size: number,
): { readonly widths: Six; readonly inRow: number } {
  const [pass = 0, fail = 0] = ticks.map((word) => headed(word, size < 10 ? 9 : 12, size));
  const type = { size, tabular: true };
  const beside = besideText(size);
  const limits = rows.flatMap((row) =>
    isInspected(row) ? [] : [fill(proseRuns(row.limit, type), 1000).width + beside + 0.2],
  );
  const most = Math.max(0, ...rows.map(({ places }) => places));
  const limit = Math.min(most > 1 ? 40 : 54, Math.max(30, ...limits));
  const units = rows.map(({ unit }) => widthOf(unit ?? '', '400Regular', size, true));
  const widths = (inRow: number): Six => {
    const found = most > 1 ? inRow * (NUMBERED + BESIDE_BLANK) + Math.max(...units) + beside : 30;
    return [AT, WIDTH - AT - limit - found - pass - fail, limit, found, pass, fail];
  };
  const inRow = [4, 3, 2].find((count) => count <= most && widths(count)[1] >= LEAST_WHAT) ?? 2;
  // Four stand in two rows alike, not as three and one.
  const even = Math.ceil(most / Math.ceil(most / inRow));
  const [at, what, ...rest] = widths(even);
  // What the names do not need is room to write in.
  const spare = Math.min(SPARE, Math.max(0, what - ENOUGH_WHAT));
  const [limitWide, found, ...ends] = rest;
  return { widths: [at, what - spare, limitWide, found + spare, ...ends], inRow: even };
}
