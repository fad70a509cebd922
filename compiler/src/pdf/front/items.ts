// What stands before and after the steps: its code, and how high it is. What is made of parts is exactly so high; of
// tables the height is worked out from their cells.
import type { Prose } from '../../document/inline.js';
import { openArt } from '../art.js';
import { WIDTH } from '../steps/frame.js';
import { type Part, setPart, short } from '../steps/set.js';
import { linesHigh } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { proseRuns, type Style, textRuns } from '../type/runs.js';
import { type Argument, call, type Raw, raw } from '../typst-code.js';

/** Millimetres. Between two items stands the larger of what the upper keeps below and the lower above. */
export interface Item {
  readonly above: number;
  readonly below: number;
  readonly height: number;
  readonly code: Raw;
}

/** Height of items that follow each other at the top of a page. */
export function itemsHigh(items: readonly Omit<Item, 'code'>[]): number {
  let [sum, below] = [0, 0];
  for (const [i, item] of items.entries()) {
    sum += (i > 0 ? Math.max(below, item.above) : 0) + item.height;
    below = item.below;
  }
  return sum;
}

/** A part as an item, with a picture of its own for what is drawn. */
export function partItem(part: Part, above: number, below = 0): Item {
  const canvas = openArt();
  const signs: Raw[] = [];
  const texts = setPart(part, { art: canvas, signs, top: OVER, left: 0 });
  const [width, height] = [WIDTH + 6 + OVER, part.height + 2 * OVER];
  const art = [canvas.svg(-OVER, 0, width, height), -OVER, -OVER, short(width), short(height)];
  const code = call('standing', [
    short(part.height),
    above,
    below,
    art,
    texts,
    call('silent', [signs, -OVER]),
  ]);
  return { above, below, height: part.height, code };
}

/** What a picture reaches over the part on each side: half a stroke. */
const OVER = 2;

const TITLE: Style = { size: 12.5, weight: 700 };

/** A heading of the second level; what it heads stays with it. */
export function titleItem(title: string, width: number, level = 2): Item {
  const height = linesHigh(fill(textRuns(title, TITLE), width).count, TITLE.size);
  return { above: 5.5, below: 2, height, code: call('titled', [title, level]) };
}

/** The title of what goes on from the page before. */
export const goOnItem = (said: string, size: number, above: number, below: number): Item => ({
  above,
  below,
  height: linesHigh(1, size),
  code: call('goes-on', [said, size, above, below]),
});

export function textHigh(text: string, style: Style, width: number): number {
  return linesHigh(fill(textRuns(text, style), width).count, style.size);
}

export function proseHigh(prose: Prose, style: Style, width: number): number {
  return linesHigh(linesOf(prose, style, width), style.size);
}

export function linesOf(prose: Prose, style: Style, width: number): number {
  return prose.length === 0 ? 0 : fill(proseRuns(prose, style), width).count;
}

/** What stands over and under cells of more than one line, at least: closer, they would run into the rules. */
const LEAST_INSET = 0.85;
/** Higher than one line of any table, lower than two. */
export const TWO_LINES = 6;

/** Height of a row of a table: of its highest cell, with what stands around it. */
export function rowHigh(cells: readonly number[], inset: number): number {
  const high = Math.max(0, ...cells);
  return short(high + 2 * (high < TWO_LINES ? inset : Math.max(inset, LEAST_INSET)) + 0.005);
}

export const rowsHigh = (rows: readonly (readonly number[])[], inset: number): readonly number[] =>
  rows.map((cells) => rowHigh(cells, inset));

/** A table whose rows have these heights, which are told to it: else it would set every cell twice to find out. */
export function tableItem(heights: readonly number[], name: string, more: readonly Argument[]): Item {
  const height = heights.reduce((sum, one) => sum + one, 0);
  return {
    above: 2,
    below: USUAL_GAP,
    height,
    code: call(name, [heights.map((one) => raw(`${one}mm`)), ...more]),
  };
}

/** What stands around a block that says nothing of it: the room between paragraphs, 0.8 of the size of the type. */
export const USUAL_GAP = 2.97;
