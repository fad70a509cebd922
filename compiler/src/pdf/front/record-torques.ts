// Torques of the record: one table, or two beside each other.
import type { BlockOf } from '../../document/blocks.js';
import { text } from '../../document/inline.js';
import type { PrintContext } from '../context.js';
import { proseCode } from '../prose.js';
import { WIDTH } from '../steps/frame.js';
import { linesHigh, widthOf } from '../type/faces.js';
import { type Argument, call } from '../typst-code.js';
import { linesOf, rowHigh, USUAL_GAP } from './items.js';
import { AT, headed, millimetres, type RecordLook, tablePart } from './record-table.js';
import type { Section } from './sections.js';

export const torquesPart = (
  block: BlockOf<'record-torques'>,
  context: PrintContext,
  look: RecordLook,
): Section =>
  look.paired && block.rows.length > 2 ? pairPart(block, context, look) : onePart(block, context, look);

function onePart({ rows }: BlockOf<'record-torques'>, { words }: PrintContext, look: RecordLook): Section {
  const torque = 52;
  const count = headed(words.count, 15, look.size);
  const wrench = headed(words.wrench, 28, look.size);
  const initials = headed(words.initials, 22, look.size);
  const joint = WIDTH - AT - count - torque - wrench - initials;
  return tablePart(words.recordTorques, look, {
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
  });
}

type Torque = BlockOf<'record-torques'>['rows'][number];

const torqueRow = ({ number, joint, count, torque }: Torque): Argument => ({
  number,
  joint: proseCode([text(joint)]),
  count: String(count),
  torque: proseCode(torque),
});

const PAIRED = { size: 9.5, tabular: true };
/** What stands beside the text of a cell, and the width of the column of line numbers. */
const PAIRED_BESIDE = 2.6;
const PAIRED_AT = 12.5;

/** On each page down the left table first: the torque stands below its joint. */
function pairPart({ rows }: BlockOf<'record-torques'>, { words }: PrintContext, look: RecordLook): Section {
  const { inset, hand } = look;
  const [wrench, initials] = [words.wrench, words.initials].map((word) =>
    Math.max(15, widthOf(word, '700Bold', PAIRED.size, true) + PAIRED_BESIDE + 0.2),
  ) as [number, number];
  const joint = (WIDTH - 4) / 2 - PAIRED_AT - wrench - initials;
  const inside = joint - PAIRED_BESIDE;
  const heights = rows.map(({ joint: name, count, torque }) => {
    const lines = linesOf([text(`${count} × ${name}`)], PAIRED, inside) + linesOf(torque, PAIRED, inside);
    return Math.max(hand, rowHigh([linesHigh(lines, PAIRED.size)], inset));
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
        PAIRED.size,
        millimetres([PAIRED_AT, joint, wrench, initials]),
        heads,
        halves(from, to).map(([first, last]) => millimetres([head, ...heights.slice(first, last)])),
        halves(from, to).map(([first, last]) => rows.slice(first, last).map(torqueRow)),
      ]),
  };
}

/** Where rows of these heights are parted so that the higher half is as low as can be. */
function halved(heights: readonly number[]): readonly (readonly [from: number, to: number])[] {
  const all = heights.reduce((sum, one) => sum + one, 0);
  let [half, high] = [0, 0];
  for (let next = heights[0]; next !== undefined && high + next <= all - high; next = heights[half]) {
    high += next;
    half += 1;
  }
  return [
    [0, half],
    [half, heights.length],
  ];
}
