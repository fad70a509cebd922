// Rows of the record that say the same of the left and the right side, as one row with blanks for each: half as many
// rows, and both sides beside each other.
import type { BlockOf, OnSide } from '../../document/blocks.js';
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

/** A row alone, or one of the first side with its counterpart. */
type Both<R> = readonly [row: R, other?: R];

export interface Sided<R> {
  /** The two sides in words, as the columns stand. */
  readonly sides: readonly [string, string];
  readonly rows: readonly Both<R>[];
}

interface Row {
  readonly number: string;
  readonly of?: OnSide;
}

/** Each row with its counterpart on the other side, where `same` says that they ask the same; none where none has one. */
export function bySides<R extends Row>(
  rows: readonly R[],
  same: (row: R, other: R) => boolean,
): Sided<R> | undefined {
  const [first, second] = [...new Set(rows.flatMap(({ of }) => (of ? [of.side] : [])))];
  if (first === undefined || second === undefined) return undefined;
  const taken = new Set<R>();
  const all = rows.flatMap((row): readonly Both<R>[] => {
    if (taken.has(row)) return [];
    taken.add(row);
    const { of } = row;
    const other =
      of &&
      rows.find(
        (one) => !taken.has(one) && one.of?.what === of.what && one.of.side !== of.side && same(row, one),
      );
    if (!other) return [[row]];
    taken.add(other);
    return [of.side === first ? [row, other] : [other, row]];
  });
  return all.length === rows.length ? undefined : { sides: [first, second], rows: all };
}

/** What stands beside the text of a cell, and the width of the column of line numbers. */
const BESIDE = 2.6;
const AT = 13;
/** Room for a figure written by hand. */
const WRITTEN = 14;
const TICK = 5;

const [BLANK, BLANKS_APART] = [7.2, 1.2];
/** Blanks for several places of a row that has no counterpart stand so many beside each other. */
const IN_ROW = 3;

type Reading = BlockOf<'record-readings'>['rows'][number];

const isMeasured = ({ reading, places }: Reading): boolean => reading !== undefined || places > 1;

/** None where no reading of one side has a counterpart. */
export function sidedReadings(
  rows: readonly Reading[],
  { words }: PrintContext,
  { size, inset, hand }: RecordLook,
): Section | undefined {
  const sided = bySides(
    rows,
    (row, other) =>
      row.places === 1 &&
      other.places === 1 &&
      row.unit === other.unit &&
      plain(row.limit) === plain(other.limit),
  );
  if (!sided) return undefined;
  const type = { size, tabular: true };
  const wide = (word: string, weight: '400Regular' | '700Bold', least = 0) =>
    Math.max(least, widthOf(word, weight, size, true) + BESIDE + 0.2);
  const [pass, fail] = [wide(words.pass, '700Bold', 9), wide(words.fail, '700Bold', 9)];
  const units = rows.map(({ unit }) => wide(unit ?? '', '400Regular'));
  const found = WRITTEN + Math.max(...units);
  const limits = rows
    .filter(isMeasured)
    .map(({ limit }) => fill(proseRuns(limit, type), 1000).width + BESIDE + 0.2);
  const limit = Math.min(36, Math.max(wide(words.limit, '700Bold'), ...limits));
  const what = WIDTH - AT - limit - 2 * (found + pass + fail);
  const line = (row: Reading): Prose => [text(row.of?.what ?? row.what)];
  return sidedTable(words.recordReadings, 'sided-readings', {
    widths: [AT, what, limit, found, pass, fail, found, pass, fail],
    heads: [words.at, words.what, words.limit, ...sided.sides, words.found, words.pass, words.fail],
    size,
    inset,
    rows: sided.rows.map(([row, other]) => {
      const said = other ? line(row) : [text(row.what)];
      const lines = isMeasured(row)
        ? Math.max(linesOf(said, type, what - BESIDE), linesOf(row.limit, type, limit - BESIDE))
        : linesOf(said, type, what + limit - BESIDE) + linesOf(row.limit, type, what + limit - BESIDE);
      const blanks =
        row.places > 1 ? Math.ceil(row.places / IN_ROW) * (BLANK + BLANKS_APART) - BLANKS_APART : TICK;
      return {
        height: Math.max(
          isMeasured(row) ? hand : 0,
          rowHigh([linesHigh(Math.max(lines, other ? 2 : 1), size), blanks], inset),
        ),
        code: () => ({
          numbers: [row.number, ...(other ? [other.number] : [])],
          what: proseCode(said),
          limit: proseCode(row.limit),
          unit: row.unit ?? '',
          places: row.places,
          'in-row': Math.min(row.places, IN_ROW),
          measured: isMeasured(row),
        }),
      };
    }),
  });
}

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
