// What the record is made of in print: frames to write in, and tables whose rows may be dealt to several pages.
import type { Block, BlockOf } from '../../document/blocks.js';
import { type Prose, text } from '../../document/inline.js';
import type { PrintContext } from '../context.js';
import { proseCode } from '../prose.js';
import { HAND, WIDTH } from '../steps/frame.js';
import { linesHigh, widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { type Argument, call, type Raw, raw } from '../typst-code.js';
import { linesOf, proseHigh, rowHigh, textHigh, USUAL_GAP } from './items.js';
import type { Section } from './sections.js';

export type RecordPartKind = 'fields' | 'record-readings' | 'record-torques' | 'record-holds';

/** How close the record is set. Millimetres. */
export interface RecordLook {
  /** Over and under the lines of tables. */
  readonly inset: number;
  /** Over and under the heading of a section. */
  readonly gap: number;
  readonly under: number;
  /** Height of a frame to write in. */
  readonly field: number;
  /** Torques stand in two tables beside each other. */
  readonly paired: boolean;
  /** So many frames may stand in one row, where that takes them all. */
  readonly row: number;
}

type Renderer<K extends RecordPartKind> = (
  block: BlockOf<K>,
  context: PrintContext,
  look: RecordLook,
) => Section;

const TYPE = { size: 10.5, tabular: true };
const BOLD = { ...TYPE, weight: 700 };
const PAIRED = { size: 9.5, tabular: true };
/** What stands beside the text of a cell, and of one in a pair of tables. */
const BESIDE = 3.6;
const PAIRED_BESIDE = 2.6;
const AT = 14;
const PAIRED_AT = 12.5;

const RECORD_PARTS: { readonly [K in RecordPartKind]: Renderer<K> } = {
  fields: ({ title, fields, ...block }, _context, look) => {
    const columns = fields.length <= look.row ? fields.length : block.columns;
    const wide = (WIDTH - 2 * (columns - 1)) / columns - 2.4;
    const deep = fields.map(({ label, lines }) =>
      Math.max(
        lines === 1 ? Math.min(12.5, look.field - 1) : look.field,
        proseHigh(label, { size: 8.5 }, wide) + HAND + 2.2,
      ),
    );
    const rows = Array.from({ length: Math.ceil(fields.length / columns) }, (_, row) =>
      Math.max(...deep.slice(row * columns, (row + 1) * columns)),
    );
    const code = () =>
      call('fields', [columns, millimetres(rows), ...fields.map(({ label }) => proseCode(label))]);
    const height = rows.reduce((sum, one) => sum + one, 0) + 2 * Math.max(0, rows.length - 1);
    return plainSection(height, code, title);
  },
  'record-readings': ({ rows }, { words }, { inset }) => {
    const { widths, inRow } = readingColumns(rows, [words.pass, words.fail]);
    const [, what, limit, found] = widths;
    return tablePart(words.recordReadings, inset, {
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
      })),
      hand: HAND,
    });
  },
  'record-torques': (block, context, look) =>
    look.paired && block.rows.length > 2 ? pairPart(block, context, look) : torquesPart(block, context, look),
  'record-holds': ({ rows }, { words }, { inset }) =>
    tablePart(words.recordHolds, inset, {
      name: 'holds',
      widths: [AT, WIDTH - AT - 80, 40, 40],
      heads: [words.at, words.checked, words.signature, words.time],
      rows: rows.map(({ number, what }) => ({
        code: () => ({ number, what: proseCode(what) }),
        texts: [[what, WIDTH - AT - 80]],
        least: 0,
      })),
      hand: HAND,
    }),
};

export function recordParts(
  { items }: BlockOf<'record'>,
  context: PrintContext,
  look: RecordLook,
): readonly Section[] {
  return items.flatMap((block) => (isRecordPart(block) ? [recordPart(block, context, look)] : []));
}

const isRecordPart = (block: Block): block is BlockOf<RecordPartKind> => block.kind in RECORD_PARTS;

function recordPart<K extends RecordPartKind>(
  block: BlockOf<K>,
  context: PrintContext,
  look: RecordLook,
): Section {
  return (RECORD_PARTS[block.kind] as Renderer<K>)(block, context, look);
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

/** Columns as narrow as their words allow. Blanks for several places stand beside each other where there is room. */
function readingColumns(
  rows: readonly Reading[],
  ticks: readonly string[],
): { readonly widths: Six; readonly inRow: number } {
  const [pass = 0, fail = 0] = ticks.map((word) => headed(word, 12));
  const limits = rows.flatMap((row) =>
    isInspected(row) ? [] : [fill(proseRuns(row.limit, TYPE), 1000).width + BESIDE + 0.2],
  );
  const most = Math.max(0, ...rows.map(({ places }) => places));
  const limit = Math.min(most > 1 ? 40 : 54, Math.max(30, ...limits));
  const units = rows.map(({ unit }) => widthOf(unit ?? '', '400Regular', TYPE.size, true));
  const widths = (inRow: number): Six => {
    const found = most > 1 ? inRow * (NUMBERED + BESIDE_BLANK) + Math.max(...units) + BESIDE : 30;
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

function torquesPart(
  { rows }: BlockOf<'record-torques'>,
  { words }: PrintContext,
  { inset }: RecordLook,
): Section {
  const torque = 52;
  const count = headed(words.count, 15);
  const wrench = headed(words.wrench, 28);
  const initials = headed(words.initials, 22);
  const joint = WIDTH - AT - count - torque - wrench - initials;
  return tablePart(words.recordTorques, inset, {
    name: 'torques',
    widths: [AT, joint, count, torque, wrench, initials],
    heads: [words.at, words.joint, words.count, words.torque, words.wrench, words.initials],
    rows: rows.map((row) => ({
      code: () => torqueRow(row),
      texts: [
        [[text(row.joint)], joint],
        [row.torque, torque],
      ],
      least: 0,
    })),
    hand: HAND,
  });
}

type Torque = BlockOf<'record-torques'>['rows'][number];

const torqueRow = ({ number, joint, count, torque }: Torque): Argument => ({
  number,
  joint: proseCode([text(joint)]),
  count: String(count),
  torque: proseCode(torque),
});

/** Two tables beside each other, on each page down the left one first: the torque stands below its joint. */
function pairPart(
  { rows }: BlockOf<'record-torques'>,
  { words }: PrintContext,
  { inset }: RecordLook,
): Section {
  const [wrench, initials] = [words.wrench, words.initials].map((word) =>
    Math.max(15, widthOf(word, '700Bold', PAIRED.size, true) + PAIRED_BESIDE + 0.2),
  ) as [number, number];
  const joint = (WIDTH - 4) / 2 - PAIRED_AT - wrench - initials;
  const inside = joint - PAIRED_BESIDE;
  const heights = rows.map(({ joint: name, count, torque }) => {
    const lines = linesOf([text(`${count} × ${name}`)], PAIRED, inside) + linesOf(torque, PAIRED, inside);
    return Math.max(HAND, rowHigh([linesHigh(lines, PAIRED.size)], inset));
  });
  const both = `${words.joint}, ${words.torque}`;
  const heads = [
    words.at,
    widthOf(both, '700Bold', PAIRED.size, true) < inside ? both : words.joint,
    words.wrench,
    words.initials,
  ];
  const head = rowHigh([linesHigh(1, PAIRED.size)], inset);
  const halves = (from: number, to: number) =>
    halved(heights.slice(from, to)).map(([first, last]) => [from + first, from + last] as const);
  return {
    title: words.recordTorques,
    above: 2,
    below: USUAL_GAP,
    rows: rows.length,
    high: (from, to) =>
      Math.max(
        ...halves(from, to).map(([first, last]) =>
          heights.slice(first, last).reduce((sum, one) => sum + one, head),
        ),
      ),
    code: (from, to) =>
      call('torque-pair', [
        millimetres([PAIRED_AT, joint, wrench, initials]),
        heads,
        halves(from, to).map(([first, last]) => millimetres([head, ...heights.slice(first, last)])),
        halves(from, to).map(([first, last]) => rows.slice(first, last).map(torqueRow)),
      ]),
  };
}

/** Where rows of these heights are parted so that both halves are as high, the first rather higher. */
function halved(heights: readonly number[]): readonly (readonly [from: number, to: number])[] {
  const all = heights.reduce((sum, one) => sum + one, 0);
  let [half, high] = [0, 0];
  while (high < all / 2) high += heights[half++] ?? all;
  return [
    [0, half],
    [half, heights.length],
  ];
}

/** So wide, or as wide as its head needs. */
const headed = (word: string, least: number): number =>
  Math.max(least, widthOf(word, '700Bold', TYPE.size, true) + BESIDE + 0.2);

interface Table {
  readonly name: string;
  readonly widths: readonly number[];
  readonly heads: readonly string[];
  readonly rows: readonly {
    /** Made only for the look that is chosen. */
    readonly code: () => Argument;
    /** Texts that may take several lines, with the widths of their columns. */
    readonly texts: readonly (readonly [said: Prose, width: number])[];
    /** Height of what else stands in it. */
    readonly least: number;
  }[];
  /** No row is lower. */
  readonly hand: number;
}

function tablePart(title: string, inset: number, { name, widths, heads, rows, hand }: Table): Section {
  const inside = (width: number) => Math.max(4, width - BESIDE);
  const head = rowHigh(
    heads.map((word, i) => textHigh(word, BOLD, inside(widths[i] ?? 0))),
    inset,
  );
  const heights = rows.map(({ texts, least }) =>
    Math.max(
      hand,
      rowHigh([least, ...texts.map(([said, width]) => proseHigh(said, TYPE, inside(width)))], inset),
    ),
  );
  return {
    title,
    above: 2,
    below: USUAL_GAP,
    rows: rows.length,
    high: (from, to) => heights.slice(from, to).reduce((sum, one) => sum + one, head),
    code: (from, to) =>
      call(name, [
        millimetres(widths),
        heads,
        millimetres([head, ...heights.slice(from, to)]),
        rows.slice(from, to).map(({ code }) => code()),
      ]),
  };
}

/** What is never parted. */
const plainSection = (height: number, code: () => Raw, title: string | undefined): Section => ({
  ...(title === undefined ? {} : { title }),
  above: 2,
  below: USUAL_GAP,
  rows: 1,
  high: () => height,
  code,
});

const millimetres = (lengths: readonly number[]): readonly Raw[] => lengths.map((one) => raw(`${one}mm`));
