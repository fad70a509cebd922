// A line of a step in print: box to tick and number, what to do, and the boxes at its right. A line too long for a page
// is parted into several.
import { type Marks, marksInRow } from '../../document/beside.js';
import type { BlockOf, Rail } from '../../document/blocks.js';
import { PRINT_INKS } from '../../document/drawing/drawing.js';
import { markDrawing } from '../../document/drawing/heads.js';
import { type Prose, plain } from '../../document/inline.js';
import type { Art } from '../art.js';
import type { PrintContext } from '../context.js';
import { cut } from '../cut.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { besidePart, orderPart } from './boxes.js';
import { GUT, RAIL } from './frame.js';
import { drawing, drawn, high, moved, NOTHING, type Part, prose, stacked, together, words } from './set.js';

/** A STOP or a HOLD is never on the page after the line that it judges; what depends on a reading had better not be. */
export type Stays = 'always' | 'where it can' | 'no';

export interface Row {
  /** `2.6`; missing in what a long line goes on with. */
  readonly number: string | undefined;
  /** Its place in its list: `6` of `2.6`, `2` of `3.4.2`. */
  readonly place: number;
  /** How it stays with the line before it. */
  readonly stays: Stays;
  /** Between two rules, which nothing comes closer to. */
  readonly ruled: boolean;
  readonly rail: Rail;
  readonly revised: boolean;
  /** From the left edge of the text. */
  readonly part: Part;
}

type Weight = 'hold' | 'stop' | undefined;

/** More lines of text than this, and a line is parted. */
const MOST_LINES = 30;
/** Fewer letters fit a line anyway, and more do not: they need not be measured. */
const LETTERS = [50, 100] as const;
/** A line is not higher than this with all its boxes, so that it stands on any page. */
const MOST_HIGH = 150;
const MARKS_LABEL = 15;
const MARK = 5.2;
const MARK_STEP = 6.4;

/** `count` is what is off, where it differs from what was printed last. */
export function actionRows(
  row: BlockOf<'row'>,
  depth: number,
  context: PrintContext,
  count: number | undefined,
): readonly Row[] {
  const weight = row.beside.some(({ kind }) => kind === 'hold') ? 'hold' : undefined;
  const inset = depth > 0 ? 2.5 : 0;
  const width =
    row.beside.length > 0 ? context.frame.text - inset : aloneWidth(row.condition, row.body, inset, context);
  const reason = (why: Prose): Prose => [
    { kind: 'strong', children: [{ kind: 'text', text: context.words.why }] },
    { kind: 'text', text: ' ' },
    ...why,
  ];
  const notes = [...row.notes, ...(context.training ? row.reasons.map(reason) : [])];
  const parts = [
    ...lead(row.condition, row.body, weight, width, context),
    ...figures(row, notes, width, context),
  ];
  const boxes = row.beside.map((beside) => besidePart(beside, context));
  const leader = row.beside.some(({ kind }) => kind !== 'socket');
  return parted(row, weight, depth, parts, boxes, leader, context, count);
}

export function stopRows(
  stop: BlockOf<'stop'>,
  depth: number,
  context: PrintContext,
  count: number | undefined,
): readonly Row[] {
  const width = aloneWidth(stop.condition, stop.body, depth > 0 ? 2.5 : 0, context);
  return parted(
    stop,
    'stop',
    depth,
    lead(stop.condition, stop.body, 'stop', width, context),
    [],
    false,
    context,
    count,
  );
}

/** Of a line with nothing beside it: one that fits the page to its edge in one line is not broken for its length. */
function aloneWidth(
  condition: Prose | undefined,
  body: Prose,
  inset: number,
  { frame: { alone, edge } }: PrintContext,
): number {
  const said = conditioned(condition, body);
  const { length } = plain(said);
  if (length < LETTERS[0] || length > LETTERS[1]) return alone - inset;
  const { width } = fill(proseRuns(said, { size: 11 }), 1000);
  return width > alone - inset && width < edge - inset ? edge - inset : alone - inset;
}

const conditioned = (condition: Prose | undefined, body: Prose): Prose =>
  condition ? [...condition, { kind: 'text', text: ' ' }, ...body] : body;

function lead(
  condition: Prose | undefined,
  body: Prose,
  weight: Weight,
  width: number,
  { words: said }: PrintContext,
): Part[] {
  const parts = cut(conditioned(condition, body), { size: 11 }, width, MOST_LINES).map((one) =>
    prose(one, { size: 11 }, width),
  );
  const heavy = weight && words(said[weight], { size: 14, weight: 800 }, width);
  const [first = NOTHING, ...rest] = parts;
  return heavy ? [stacked(1.95, [heavy, first]), ...rest] : parts;
}

/** Small heads to mark and notes, and the tightening order: beside them where a row of five heads has room there. */
function figures(
  row: BlockOf<'row'>,
  notes: readonly Prose[],
  width: number,
  context: PrintContext,
): readonly Part[] {
  if (!row.order) return under(row.marks, notes, width);
  const { width: wide, part: order } = orderPart(row.order, 36, context.frame.text - 2.5);
  const most = Math.max(0, ...row.marks.map(({ count }) => count));
  const left = width - wide - 3;
  const isBeside = left >= MARKS_LABEL + MARK_STEP * Math.min(most, 5) && most <= 10;
  if (!isBeside) return [...under(row.marks, notes, width), moved(order, 0, 2.4)];
  const [first = NOTHING, ...rest] = under(row.marks, notes, left);
  const [top, ...more] =
    row.marks.length > 0 ? [moved(first, 0, -1.8), ...rest] : [moved(first, 0, -1.3), ...rest];
  return [moved(together(stacked(0, [top, ...more]), moved(order, width - wide, 0)), 0, 2)];
}

/** Each with the room that it keeps above. */
function under(marks: readonly Marks[], notes: readonly Prose[], width: number): readonly Part[] {
  const style = { size: 9.5 };
  return [
    ...marks.map((one) => moved(marksPart(one, width), 0, 1.8)),
    ...notes
      .flatMap((said) => cut(said, style, width, MOST_LINES))
      .map((said) => moved(prose(said, style, width), 0, 1.3)),
  ];
}

function marksPart({ label, count, shape }: Marks, width: number): Part {
  const perRow = marksInRow(count, (width - MARKS_LABEL + MARK_STEP - MARK) / MARK_STEP);
  const mark = drawing(markDrawing(shape, PRINT_INKS), MARK);
  const all = Array.from({ length: count }, (_, i) =>
    moved(mark, MARKS_LABEL + (i % perRow) * MARK_STEP, Math.floor(i / perRow) * (MARK + 1.4)),
  );
  const heads = together(...all);
  const name = prose([label], { size: 8.5 }, MARKS_LABEL - 0.5, { silent: true });
  const height = Math.max(heads.height, name.height);
  return high(
    height,
    together(moved(name, 0, (height - name.height) / 2), moved(heads, 0, (height - heads.height) / 2)),
  );
}

interface Numbered {
  readonly number: string;
  readonly rail: Rail;
  readonly revised?: boolean;
  readonly depends?: unknown;
}

/** The words and boxes dealt out to as many lines as they need: nearly always one. */
function parted(
  { number, rail, revised = false, depends }: Numbered,
  weight: Weight,
  depth: number,
  parts: readonly Part[],
  boxes: readonly Part[],
  leader: boolean,
  context: PrintContext,
  count: number | undefined,
): readonly Row[] {
  const texts = packed(0, parts);
  const sides = packed(2, boxes);
  return Array.from({ length: Math.max(1, texts.length, sides.length) }, (_, i) => ({
    number: i === 0 ? number : undefined,
    place: Number(/(\d+)\D*$/.exec(number)?.[1] ?? 1),
    stays: i > 0 ? 'no' : weight !== undefined ? 'always' : depends ? 'where it can' : 'no',
    ruled: weight !== undefined && i === 0,
    rail,
    revised,
    part: together(
      rowPart(
        i === 0 ? weight : undefined,
        depth,
        texts[i] ?? NOTHING,
        sides[i],
        i === 0 && leader,
        i === 0,
        context,
      ),
      ...(i === 0 && count !== undefined ? [moved(countPart(count), 0, 2.9)] : []),
    ),
  }));
}

/** Parts below each other in piles, none higher than a line may be. */
function packed(gap: number, parts: readonly Part[]): readonly Part[] {
  const piles: Part[][] = [];
  let height = 0;
  for (const part of parts) {
    const pile = piles.at(-1);
    if (pile && height + gap + part.height <= MOST_HIGH) {
      pile.push(part);
      height += gap + part.height;
    } else {
      piles.push([part]);
      height = part.height;
    }
  }
  return piles.map((pile) => stacked(gap, pile));
}

function rowPart(
  weight: Weight,
  depth: number,
  text: Part,
  side: Part | undefined,
  leader: boolean,
  ticked: boolean,
  { frame }: PrintContext,
): Part {
  const inset = weight ? 3.6 : 2.4;
  const left = RAIL + frame.label;
  const right = left + frame.text;
  const height = Math.max(text.height, side?.height ?? 0) + 2 * inset;
  const words = depth > 0 ? together(drawn(0, nestedBar(text.height)), moved(text, 2.5, 0)) : text;
  return high(
    height,
    together(
      drawn(0, (art, x, y) => {
        if (ticked) art.frame(x + RAIL + 2.5, y + (weight ? 2.2 : 0.95), 5.5, 5.5, 1);
        if (leader)
          art.line(x + right + 1.6, y + inset + 1.4, x + right + GUT, y + inset + 1.4, 0.75, {
            paint: frame.accent,
          });
        if (weight) for (const at of [y, y + height]) art.line(x + RAIL, at, x + frame.body, at, 2);
      }),
      moved(words, left, inset),
      ...(side ? [moved(side, right + GUT, inset)] : []),
    ),
  );
}

const countPart = (count: number): Part =>
  words(String(count), { size: 9, weight: 700, tabular: true }, RAIL, { silent: true });

const nestedBar =
  (height: number) =>
  (art: Art, x: number, y: number): void =>
    art.line(x, y, x, y + height, 1.5);
