// Rows of the record that say the same of the left and the right side, as one row with blanks for each: half as many
// rows, and both sides beside each other.
import type { BlockOf } from '../../document/blocks.js';
import { bySides, type Sided } from '../../document/by-sides.js';
import { type Prose, plain, text } from '../../document/inline.js';
import type { PrintContext } from '../context.js';
import { proseCode } from '../prose.js';
import { WIDTH } from '../steps/frame.js';
import { linesHigh, widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { type Argument, call } from '../typst-code.js';
import { linesOf, rowHigh, USUAL_GAP } from './items.js';
import { millimetres, type RecordLook } from './record-table.js';
import type { Section } from './sections.js';

/** What stands beside the text of a cell, and the width of the column of line numbers. */
const BESIDE = 2.6;
const AT = 13;
/** Room for a figure written by hand: at least, and for each digit, sign or comma. Common practice. */
const [WRITTEN, CHARACTER] = [14, 2.5];
const TICK = 5;

const [BLANK, BLANKS_APART] = [7.2, 1.2];
/** The number before the blank of one of several places, and what stands between two of them. */
const [NUMBER, BESIDE_BLANK] = [2.2, 0.8];
/** Blanks beside each other take no more than this, so that names still have room. */
const MOST_FOUND = 43;
/** Blanks for several places of a row that has no counterpart stand so many beside each other. */
const IN_ROW = 3;

type Reading = BlockOf<'record-readings'>['rows'][number];

const isMeasured = ({ reading, places }: Reading): boolean => reading !== undefined || places > 1;

/** None where no reading of one side has a counterpart. */
export function sidedReadings(
  rows: readonly Reading[],
  context: PrintContext,
  look: RecordLook,
): Section | undefined {
  // Limits stand in a column of their own, or below what they are for, and blanks for several places beside each other
  // for both sides or alone in their row: as is lowest.
  const tables = [1, MOST_PLACES].flatMap((most) => {
    const sided = bySides(rows, (row, other) => isSameReading(row, other) && row.places <= most);
    return sided ? [true, false].flatMap((own) => readingsTable(sided, own, context, look) ?? []) : [];
  });
  const height = ({ high, rows: all }: Section) => high(0, all);
  return tables.reduce<Section | undefined>(
    (best, one) => (best && height(best) <= height(one) ? best : one),
    undefined,
  );
}

/** More places than this are a table of their own. */
const MOST_PLACES = 6;
/** Narrower, and names take a line for each word. */
const LEAST_WHAT = 26;

const isSameReading = (row: Reading, other: Reading): boolean =>
  row.places === other.places && row.unit === other.unit && plain(row.limit) === plain(other.limit);

function readingsTable(
  sided: Sided<Reading>,
  ownColumn: boolean,
  { words }: PrintContext,
  { size, inset, hand }: RecordLook,
): Section | undefined {
  const type = { size, tabular: true };
  const wide = (word: string, weight: '400Regular' | '700Bold', least = 0) =>
    Math.max(least, widthOf(word, weight, size, true) + BESIDE + 0.2);
  const [pass, fail] = [wide(words.pass, '700Bold', 9), wide(words.fail, '700Bold', 9)];
  const paired = sided.rows.flatMap(([row, other]) => (other ? [row] : []));
  const units = paired.map(({ unit, places }) => (places > 1 ? 0 : wide(unit ?? '', '400Regular')));
  const inPlaces = paired.filter(({ places }) => places > 1).map((row) => blanksWide(row, placesInRow(row)));
  const found = Math.max(WRITTEN + Math.max(0, ...units), ...inPlaces.map((one) => one + BESIDE + 0.2));
  const at = Math.max(
    wide(words.at, '700Bold'),
    ...sided.rows.flat().map((row) => wide(row?.number ?? '', '400Regular')),
  );
  const room = WIDTH - at - 2 * (found + pass + fail);
  const limits = sided.rows
    .filter(([row]) => isMeasured(row))
    .map(([row]) => fill(proseRuns(limitOf(row), type), 1000).width + BESIDE + 0.2);
  const limit = ownColumn ? Math.min(36, Math.max(wide(words.limit, '700Bold'), ...limits)) : 0;
  const what = room - limit;
  if (what < LEAST_WHAT) return undefined;
  // What is looked at only takes the room of what would be found, too.
  const asked = (row: Reading) => (isMeasured(row) ? room : room + found);
  const linesIn = (said: Prose, width: number) => linesOf(said, type, width - BESIDE);
  return sidedTable(words.recordReadings, 'sided-readings', {
    widths: [at, what, ...(ownColumn ? [limit] : []), found, pass, fail, found, pass, fail],
    heads: [
      words.at,
      ...(ownColumn ? [words.what, words.limit] : [headOf(words.what, words.limit, what, size)]),
      ...sided.sides,
      words.found,
      words.pass,
      words.fail,
    ],
    size,
    inset,
    rows: sided.rows.map(([row, other]) => {
      const said = [text(other ? (row.of?.what ?? row.what) : row.what)];
      const must = limitOf(row);
      const lines =
        ownColumn && isMeasured(row)
          ? Math.max(linesIn(said, what), linesIn(must, limit))
          : linesIn(said, asked(row)) + linesIn(must, asked(row));
      const inRow = other ? placesInRow(row) : even(row.places, IN_ROW);
      const blanks = Math.ceil(row.places / inRow) * (BLANK + BLANKS_APART) - BLANKS_APART;
      return {
        height: Math.max(
          isMeasured(row) ? hand : 0,
          rowHigh([linesHigh(Math.max(lines, other ? 2 : 1), size), row.places > 1 ? blanks : TICK], inset),
        ),
        code: () => ({
          numbers: [row.number, ...(other ? [other.number] : [])],
          what: proseCode(said),
          limit: proseCode(must),
          unit: row.unit ?? '',
          places: row.places,
          'in-row': inRow,
          measured: isMeasured(row),
        }),
      };
    }),
  });
}

/** It tells the unit of several blanks, which have no room for one. */
const limitOf = ({ limit, places, unit = '' }: Reading): Prose =>
  limit.length === 0 && places > 1 && unit !== '' ? [text(unit)] : limit;

/** One blank of a row whose places stand beside each other: as wide as what is written in it. */
function blankWide({ limit }: Reading): number {
  const longest = Math.max(0, ...(plain(limit).match(/[\d.,/]+/g) ?? []).map(({ length }) => length));
  return Math.max(9.5, 2 + CHARACTER * longest);
}

const blanksWide = (row: Reading, inRow: number): number =>
  inRow * (NUMBER + blankWide(row) + BESIDE_BLANK) - BESIDE_BLANK;

/** As many as fit. */
function placesInRow(row: Reading): number {
  let most = row.places;
  while (most > 1 && blanksWide(row, most) > MOST_FOUND) most -= 1;
  return even(row.places, most);
}

/** In rows alike: four are two and two, not three and one. */
const even = (places: number, most: number): number => Math.ceil(places / Math.ceil(places / most));

/** `What, Limit`, or the first of them where both do not fit. */
const headOf = (first: string, second: string, width: number, size: number): string =>
  widthOf(`${first}, ${second}`, '700Bold', size, true) < width - BESIDE ? `${first}, ${second}` : first;

type Torque = BlockOf<'record-torques'>['rows'][number];

/** None where no torque of one side has a counterpart. */
export function sidedTorques(
  rows: readonly Torque[],
  { words }: PrintContext,
  { size, inset, hand }: RecordLook,
): Section | undefined {
  const sided = bySides(
    rows,
    (row, other) => row.count === other.count && plain(row.torque) === plain(other.torque),
  );
  if (!sided) return undefined;
  const type = { size, tabular: true };
  const [wrench, initials] = [words.wrench, words.initials].map((word) =>
    Math.max(18, widthOf(word, '700Bold', size, true) + BESIDE + 0.2),
  ) as [number, number];
  const joint = WIDTH - AT - 2 * (wrench + initials);
  return sidedTable(words.recordTorques, 'sided-torques', {
    widths: [AT, joint, wrench, initials, wrench, initials],
    heads: [words.at, `${words.joint}, ${words.torque}`, ...sided.sides, words.wrench, words.initials],
    size,
    inset,
    rows: sided.rows.map(([row, other]) => {
      const said = [text(`${row.count} × ${other ? row.of?.what : row.joint}`)];
      const lines = linesOf(said, type, joint - BESIDE) + linesOf(row.torque, type, joint - BESIDE);
      return {
        height: Math.max(hand, rowHigh([linesHigh(lines, size)], inset)),
        code: () => ({
          numbers: [row.number, ...(other ? [other.number] : [])],
          joint: proseCode(said),
          torque: proseCode(row.torque),
        }),
      };
    }),
  });
}

type Hold = BlockOf<'record-holds'>['rows'][number];

/** None unless every hold has its counterpart. */
export function sidedHolds(
  rows: readonly Hold[],
  { words }: PrintContext,
  { size, inset, hand }: RecordLook,
): Section | undefined {
  const sided = bySides(rows, (row, other) => plain(row.what) === plain(other.what));
  if (!sided?.rows.every(([, other]) => other)) return undefined;
  const time = Math.max(18, widthOf(words.time, '700Bold', size, true) + BESIDE + 0.2);
  const what = WIDTH - AT - 2 * (SIGNED + time);
  return sidedTable(words.recordHolds, 'sided-holds', {
    widths: [AT, what, SIGNED, time, SIGNED, time],
    heads: [words.at, words.checked, ...sided.sides, words.signature, words.time],
    size,
    inset,
    rows: sided.rows.map(([row, other]) => ({
      height: Math.max(
        hand,
        rowHigh(
          [linesHigh(Math.max(2, linesOf(row.what, { size, tabular: true }, what - BESIDE)), size)],
          inset,
        ),
      ),
      code: () => ({ numbers: [row.number, other?.number ?? ''], what: proseCode(row.what) }),
    })),
  });
}

/** Room for a signature. */
const SIGNED = 34;

interface Table {
  readonly widths: readonly number[];
  readonly heads: readonly string[];
  readonly size: number;
  readonly inset: number;
  readonly rows: readonly { readonly height: number; readonly code: () => Argument }[];
}

/** Under two lines of heads, the upper one of which names the sides. */
function sidedTable(title: string, name: string, { widths, heads, size, inset, rows }: Table): Section {
  const head = rowHigh([linesHigh(1, size)], inset);
  return {
    title,
    above: 2,
    below: USUAL_GAP,
    rows: rows.length,
    high: (from, to) => rows.slice(from, to).reduce((sum, { height }) => sum + height, 2 * head),
    code: (from, to) =>
      call(name, [
        size,
        millimetres(widths),
        heads,
        millimetres([head, head, ...rows.slice(from, to).map(({ height }) => height)]),
        rows.slice(from, to).map(({ code }) => code()),
      ]),
  };
}
