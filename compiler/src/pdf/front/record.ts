// The record, the torque card and the hand-over page in print.
import type { TorqueStage } from '../../document/beside.js';
import type { BlockOf, TorqueRow } from '../../document/blocks.js';
import { asSvg, PRINT_INKS } from '../../document/drawing/drawing.js';
import { markDrawing } from '../../document/drawing/heads.js';
import { orderDrawing, orderWidth } from '../../document/drawing/order.js';
import { type Prose, plainFigure } from '../../document/inline.js';
import { say } from '../../document/words.js';
import type { PrintContext } from '../context.js';
import { figureCode, proseCode, quantityCode } from '../prose.js';
import { headSource } from '../steps/boxes.js';
import { WIDTH } from '../steps/frame.js';
import { type Argument, call, type Raw, raw } from '../typst-code.js';
import { type Item, proseHigh, rowsHigh, tableItem, textHigh, titleItem, USUAL_GAP } from './items.js';

const RECORD_KINDS = [
  'torque-table',
  'fields',
  'record-readings',
  'record-torques',
  'record-holds',
  'off-now',
] as const;
export type RecordKind = (typeof RECORD_KINDS)[number];

type Renderer<K extends RecordKind> = (
  block: BlockOf<K>,
  context: PrintContext,
  inset: number,
) => readonly Item[];

const TYPE = { size: 10.5, tabular: true };
const BOLD = { ...TYPE, weight: 700 };
/** What stands beside the text of a cell. */
const BESIDE = 3.6;

/** `inset` is what stands over and under the lines of its tables. */
export const RECORD: { readonly [K in RecordKind]: Renderer<K> } = {
  'torque-table': ({ rows }) => [alone(call('card', [rows.map(cardRow)]))],
  fields: (block, context) => {
    const rows = Math.ceil(block.fields.length / block.columns);
    const deep = Array.from({ length: rows }, (_, row) =>
      Math.max(
        ...block.fields
          .slice(row * block.columns, (row + 1) * block.columns)
          .map(({ lines }) => (lines === 1 ? 12.5 : 17)),
      ),
    );
    const fields = block.fields.map((field) => ({ label: proseCode(field.label), lines: field.lines }));
    return [
      ...(block.title === undefined ? [] : [section(block.title, context)]),
      {
        above: 2,
        below: USUAL_GAP,
        height: deep.reduce((sum, one) => sum + one, 0) + 2 * Math.max(0, rows - 1),
        code: call('fields', [block.columns, deep.map((one) => raw(`${one}mm`)), ...fields]),
      },
    ];
  },
  'record-readings': ({ rows }, context, inset) => {
    // Blanks for several places stand two beside each other.
    const [limitWide, foundWide] = rows.some(({ places }) => places > 1) ? [50, 46] : [54, 28];
    return sheet(context.words.recordReadings, context, inset, {
      name: 'readings',
      more: [limitWide, foundWide],
      widths: [14, WIDTH - 42 - limitWide - foundWide, limitWide, foundWide, 14, 14],
      heads: ['at', 'what', 'limit', 'found', 'pass', 'fail'].map((key) => context.words[key as 'at']),
      rows: rows.map(({ number, what, limit, unit, places }) => ({
        code: { number, what, limit: proseCode(limit), unit: unit ?? '', places },
        texts: [[], [{ kind: 'text', text: what }], limit],
        least: Math.max(5, places > 1 ? Math.ceil(places / 2) * 7.2 - 1.2 : 0),
      })),
    });
  },
  'record-torques': ({ rows }, context, inset) =>
    sheet(context.words.recordTorques, context, inset, {
      name: 'torques',
      widths: [14, WIDTH - 132, 15, 52, 29, 22],
      heads: ['at', 'joint', 'count', 'torque', 'wrench', 'initials'].map(
        (key) => context.words[key as 'at'],
      ),
      rows: rows.map(({ number, joint, count, torque }) => ({
        code: { number, joint, count: String(count), torque: proseCode(torque) },
        texts: [[], [{ kind: 'text', text: joint }], [], torque],
        least: 0,
      })),
    }),
  'record-holds': ({ rows }, context, inset) =>
    sheet(context.words.recordHolds, context, inset, {
      name: 'holds',
      widths: [14, WIDTH - 94, 40, 40],
      heads: ['at', 'checked', 'signature', 'time'].map((key) => context.words[key as 'at']),
      rows: rows.map(({ number, what }) => ({
        code: { number, what: proseCode(what) },
        texts: [[], what],
        least: 6,
      })),
    }),
  'off-now': (block, { words }) => [
    alone(
      call('off-now', [
        block.at,
        `${say(words.offCount, { count: block.rail.off })}, ${say(words.torqueCount, { count: block.rail.loose })}`,
        block.groups.map(({ title, rows }) => ({
          title,
          rows: rows.map(({ what, since, next }) => ({
            what: proseCode(what),
            since,
            next: proseCode(next ?? []),
          })),
        })),
        block.torques.map(({ number, joint, figure }) => ({ number, joint, figure: quantityCode(figure) })),
        block.clocks.map(({ name, length, from, next }) => ({
          name,
          length: plainFigure(length),
          since: from,
          next: proseCode(next),
        })),
        block.bans.map(proseCode),
      ]),
    ),
  ],
};

/** On a sheet of its own, which is as long as it is. */
const alone = (code: Raw): Item => ({ above: 2, below: USUAL_GAP, height: 0, code });

const section = (title: string, { isPart }: PrintContext): Item => titleItem(title, WIDTH, isPart ? 3 : 2);

interface SheetTable {
  readonly name: string;
  /** What its call takes before the rows. */
  readonly more?: readonly number[];
  readonly widths: readonly number[];
  readonly heads: readonly string[];
  readonly rows: readonly {
    readonly code: Argument;
    /** Cells whose text may take several lines, from the left. */
    readonly texts: readonly Prose[];
    readonly least: number;
  }[];
}

function sheet(
  title: string,
  context: PrintContext,
  inset: number,
  { name, more = [], widths, heads, rows }: SheetTable,
): Item[] {
  const inside = (column: number) => Math.max(4, (widths[column] ?? 0) - BESIDE);
  const cells = [
    heads.map((head, i) => textHigh(head, BOLD, inside(i))),
    ...rows.map(({ texts, least }) => [least, ...texts.map((text, i) => proseHigh(text, TYPE, inside(i)))]),
  ];
  return [
    section(title, context),
    tableItem(rowsHigh(cells, inset), name, [...more, rows.map(({ code }) => code)]),
  ];
}

const settingCode = ({ label, figure }: NonNullable<TorqueStage['set']>): Argument => ({
  label,
  value: figure.primary.value,
  unit: figure.primary.unit,
  loud: figure.primary.loud,
  other: figure.secondary && figureCode(figure.secondary),
});

function cardRow(row: TorqueRow): Argument {
  const figure = row.stage.figure?.primary;
  const { order } = row;
  return {
    number: row.number,
    joint: row.joint,
    detail: proseCode(row.detail),
    head: row.head && { source: headSource(row.head), alt: row.head.label },
    count: row.count,
    stage: {
      label: row.stage.label,
      value: figure?.value,
      unit: figure?.unit ?? row.stage.unit ?? '',
      loud: figure?.loud,
      other: row.stage.figure?.secondary ? figureCode(row.stage.figure.secondary) : undefined,
      dial: row.stage.set && settingCode(row.stage.set),
    },
    how: proseCode(row.how),
    mark: asSvg(markDrawing(row.head?.shape ?? 'round', PRINT_INKS)),
    order: order && {
      source: asSvg(orderDrawing(order, PRINT_INKS)),
      alt: order.alt,
      width: orderWidth(order, 30),
    },
    revised: row.revised ?? false,
  };
}
