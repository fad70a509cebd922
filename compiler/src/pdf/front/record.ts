// The torque card and the hand-over page in print.
import type { TorqueStage } from '../../document/beside.js';
import { marksInRow } from '../../document/beside.js';
import type { BlockOf, TorqueRow } from '../../document/blocks.js';
import { bySides } from '../../document/by-sides.js';
import { asSvg, PRINT_INKS } from '../../document/drawing/drawing.js';
import { markDrawing } from '../../document/drawing/heads.js';
import { orderDrawing, orderWidth } from '../../document/drawing/order.js';
import { plainFigure } from '../../document/inline.js';
import { say } from '../../document/words.js';
import type { PrintContext } from '../context.js';
import { figureCode, proseCode } from '../prose.js';
import { headSource } from '../steps/boxes.js';
import { widthOf } from '../type/faces.js';
import { type Argument, call, type Raw } from '../typst-code.js';
import { type Item, USUAL_GAP } from './items.js';

const RECORD_KINDS = ['torque-table', 'off-now'] as const;
export type RecordKind = (typeof RECORD_KINDS)[number];

type Renderer<K extends RecordKind> = (block: BlockOf<K>, context: PrintContext) => readonly Item[];

export const RECORD: { readonly [K in RecordKind]: Renderer<K> } = {
  'torque-table': ({ rows }) => {
    const all = joints(rows).map((one) => one.map((row, i) => cardRow(row, i)));
    return [alone(call('card', [all, ofBothSides(rows) ?? all]))];
  },
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
        block.torques.map(({ number, joint, torque }) => ({ number, joint, torque: proseCode(torque) })),
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

/** So many small heads stand beside each other in the last column. */
const MARKS = 7;
/** Room for them, and what one takes with the space behind it: mm. */
const [MARKS_WIDE, MARK_STEP] = [46, 6.4];
/** More turns than this at one joint may not fit a page together. */
const MOST_TURNS = 5;

/** Rows of one joint at one line. */
function joints(rows: readonly TorqueRow[]): readonly (readonly TorqueRow[])[] {
  const all: TorqueRow[][] = [];
  for (const row of rows) {
    const last = all.at(-1);
    const before = last?.[0];
    const isSame =
      before?.row === row.row &&
      before.joint === row.joint &&
      before.count === row.count &&
      before.head?.label === row.head?.label;
    if (last && isSame && last.length < MOST_TURNS) last.push(row);
    else all.push([row]);
  }
  return all;
}

/** Joints that are torqued alike on both sides as one, with heads to tick for each; none where there are none. */
function ofBothSides(rows: readonly TorqueRow[]): Argument[] | undefined {
  const all = joints(rows).map((turns) => {
    const of = turns[0]?.of;
    return { turns, ...(of ? { of } : {}) };
  });
  const said = ({ turns }: (typeof all)[number]) =>
    JSON.stringify(turns.map((row, i) => cardRow({ ...row, number: '', joint: '' }, i)));
  const sided = bySides(all, (one, other) => said(one) === said(other));
  if (!sided) return undefined;
  const named = Math.max(...sided.sides.map((side) => widthOf(side, '400Regular', 10))) + 2;
  return sided.rows.map(([{ turns, of }, other]) =>
    turns.map((row, i) =>
      other && of
        ? {
            ...cardRow({ ...row, joint: of.what }, i),
            numbers: [row.number, other.turns[0]?.number ?? ''],
            sides: sided.sides,
            'in-row': marksInRow(row.count, (MARKS_WIDE - named) / MARK_STEP),
          }
        : cardRow(row, i),
    ),
  );
}

const settingCode = ({ label, figure }: NonNullable<TorqueStage['set']>): Argument => ({
  label,
  value: figure.primary.value,
  unit: figure.primary.unit,
  loud: figure.primary.loud,
  other: figure.secondary && figureCode(figure.secondary),
});

/** The order of a joint is drawn once beside its first turn. */
function cardRow(row: TorqueRow, i: number): { readonly [key: string]: Argument } {
  const figure = row.stage.figure?.primary;
  const order = i === 0 ? row.order : undefined;
  return {
    numbers: [row.number],
    sides: [],
    joint: row.joint,
    detail: proseCode(row.detail),
    head: row.head && { source: headSource(row.head), alt: row.head.label },
    count: row.count,
    stage: {
      label: row.stage.label ?? row.stage.set?.joint,
      value: figure?.value,
      unit: figure?.unit ?? row.stage.unit ?? '',
      loud: figure?.loud,
      other: row.stage.figure?.secondary ? figureCode(row.stage.figure.secondary) : undefined,
      dial: row.stage.set && settingCode(row.stage.set),
    },
    how: proseCode(row.how),
    'in-row': marksInRow(row.count, MARKS),
    mark: asSvg(markDrawing(row.head?.shape ?? 'round', PRINT_INKS)),
    order: order && {
      source: asSvg(orderDrawing(order, PRINT_INKS)),
      alt: order.alt,
      width: orderWidth(order, 30),
    },
    revised: row.revised ?? false,
  };
}
