// What stands between the lines of a step: signal panels, signs of protection, bans, heads of branches, remarks. Each
// stands in the whole width, beside the rail.
import type { Signal } from '@baywright/language';
import type { BlockOf } from '../../document/blocks.js';
import { type Drawing, PRINT_INKS } from '../../document/drawing/drawing.js';
import { alertDrawing, protectionDrawing } from '../../document/drawing/symbols.js';
import type { Prose } from '../../document/inline.js';
import { MANDATORY_INKS, SAFETY_COLOURS } from '../../safety-colours.js';
import type { PrintContext } from '../context.js';
import { widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { proseRuns } from '../type/runs.js';
import { picturePart } from './boxes.js';
import { RAIL, WIDTH } from './frame.js';
import { balanced, drawing, drawn, high, moved, type Part, prose, stacked, together, words } from './set.js';

/** Of the rail's spine, and what panels stand clear of it. */
const LEFT = RAIL + 2.5;
const AROUND = 1.6;

export function signalPanel(signal: Signal, word: string, body: Prose, context: PrintContext): Part {
  const width = context.frame.body - LEFT;
  const room = width - context.frame.signal - 6;
  const panel = signalBox(signal, word, balanced(body, SAID, room), width, context);
  return high(panel.height + 2 * AROUND, moved(panel, LEFT, AROUND));
}

/** Of the first page: what the danger is, and in which lines it is met. */
export function signalRow(
  { signal, word, body, where }: BlockOf<'dangers'>['rows'][number],
  context: PrintContext,
): Part {
  const room = WIDTH - context.frame.signal - 6;
  const place = { size: 11 };
  const wide = Math.min(room / 2, fill(proseRuns(where, place), 1000).width + 0.5);
  const said = balanced(body, SAID, room - wide - 4);
  const text = together(said, moved(prose(where, place, wide), room - wide, 0));
  const panel = signalBox(signal, word, text, WIDTH, context);
  return high(panel.height + 2 * AROUND, moved(panel, 0, AROUND));
}

const SAID = { size: 11, weight: 600 } as const;

function signalBox(signal: Signal, word: string, text: Part, width: number, context: PrintContext): Part {
  const { frame } = context;
  const heavy = signal === 'danger' || signal === 'warning';
  const weight = { danger: 3, warning: 1.5, caution: 1.5, notice: 0.75 }[signal];
  const inks = cellInks(signal, context.safetyColours);
  const style = {
    size: word.length > 9 ? 10.5 : 11.5,
    weight: signal === 'notice' ? 700 : 800,
    italic: signal === 'notice',
  };
  const triangle = signal === 'notice' ? [] : [alertDrawing(inks.triangle)];
  const room = frame.signal - 5 - 6.2 * triangle.length;
  const said = words(word, style, room, { white: inks.white });
  const height = Math.max(said.height, text.height, 4.6) + 4;
  const middle = (part: Part) => (height - part.height) / 2;
  const sign = triangle.map((one: Drawing) => {
    const part = drawing(one, 4.6);
    return moved(part, 2.5, middle(part) - 0.2);
  });
  const box = together(
    drawn(height, (art, x, y) => {
      if (inks.ground !== undefined) art.fill(x, y, frame.signal, height, inks.ground);
      art.line(x + frame.signal, y, x + frame.signal, y + height, heavy ? weight : Math.min(weight, 1.5));
      art.frame(x, y, width, height, weight);
    }),
    ...sign,
    moved(said, 2.5 + 6.2 * triangle.length, middle(said)),
    moved(text, frame.signal + 3, middle(text)),
  );
  return high(height, box);
}

function cellInks(signal: Signal, coloured: boolean) {
  if (coloured) {
    const { ground, letters } = SAFETY_COLOURS[signal];
    return { ground, white: letters === '#FFFFFF', triangle: { ink: letters, paper: ground } };
  }
  const reversed = signal === 'danger' || signal === 'warning';
  return reversed
    ? { ground: 'black', white: true, triangle: { ink: 'white', paper: 'black' } }
    : { ground: undefined, white: false, triangle: PRINT_INKS };
}

export function wearLine(block: BlockOf<'wear'>, { words: said, frame, safetyColours }: PrintContext): Part {
  const [lead, sign] = [words(said.wear, { size: 10.5, weight: 700 }, 60), 10];
  let [x, y] = [widthOf(said.wear, '700Bold', 10.5) + 3, 0];
  const first = x;
  const parts = block.signs.map((one) => {
    const wide = widthOf(one.label, '400Regular', 10.5);
    if (x > first && x + sign + 2 + wide > frame.body - LEFT) [x, y] = [first, y + sign + 2];
    const label = words(one.label, { size: 10.5 }, wide + 0.5);
    const picture = drawing(protectionDrawing(one.sign, safetyColours ? MANDATORY_INKS : PRINT_INKS), sign);
    const part = moved(together(picture, moved(label, sign + 2, (sign - label.height) / 2)), x, y);
    x += sign + 2 + wide + 5;
    return part;
  });
  const all = together(moved(lead, 0, (sign - lead.height) / 2), ...parts);
  return high(y + sign + 2 * AROUND, moved(all, LEFT, AROUND));
}

export function bannerBar(block: BlockOf<'banner'>, { words: said, frame }: PrintContext): Part {
  const on = block.edge === 'start';
  const width = frame.body - LEFT;
  const text = prose(
    [{ kind: 'text', text: `${on ? said.fromHere : said.endsHere} ` }, ...block.body],
    { size: 10.5, weight: 700 },
    width - 6,
    { white: on },
  );
  const height = text.height + 3.6;
  const bar = together(
    drawn(height, (art, x, y) => {
      if (on) art.fill(x, y, width, height, 'black');
      art.frame(x, y, width, height, 1.5);
    }),
    moved(text, 3, 1.8),
  );
  return high(height + 2 * AROUND, moved(bar, LEFT, AROUND));
}

/** The head of a branch or a repeat, with boxes to tick for each time. */
export function leadIn(heading: Prose, boxes: number, { frame }: PrintContext): Part {
  const side = boxes * 5.4 + (boxes > 0 ? 3 : 0);
  const width = frame.body - LEFT;
  const isWide = side > width / 2;
  const text = prose(heading, { size: 11, weight: 700 }, isWide ? width : width - side);
  const perRow = Math.max(1, Math.floor((width + 1.2) / 5.4));
  const ticks = drawn(isWide ? Math.ceil(boxes / perRow) * 5.4 : 0, (art, x, y) => {
    for (let i = 0; i < boxes; i++)
      art.frame(x + (i % perRow) * 5.4, y + Math.floor(i / perRow) * 5.4, 4.2, 4.2, 0.75);
  });
  const all = isWide
    ? stacked(2, [text, ticks])
    : together(text, moved(ticks, width - side + 3, (Math.min(text.height, 2.6) - 4.2) / 2));
  return high((isWide ? all.height : text.height) + 4, moved(all, LEFT, 2));
}

/** Beside the numbers, at the left edge of the words. */
function aside(part: Part, { frame }: PrintContext): Part {
  return high(part.height + 2.8, moved(part, RAIL + frame.label, 1.4));
}

export function tallyLine(body: Prose, context: PrintContext): Part {
  return aside(prose(body, { size: 9.5 }, asideWidth(context)), context);
}

export function remark(label: string | undefined, body: Prose, context: PrintContext): Part {
  const said: Prose =
    label === undefined
      ? body
      : [{ kind: 'strong', children: [{ kind: 'text', text: label }] }, { kind: 'text', text: ' ' }, ...body];
  const text = prose(said, { size: 10 }, asideWidth(context) - 2.5);
  const height = text.height + 1.2;
  const bar = drawn(height, (art, x, y) => art.line(x, y, x, y + height, 0.75));
  return aside(together(bar, moved(text, 2.5, 0.6)), context);
}

export function figureAside({ picture }: BlockOf<'figure'>, context: PrintContext): Part {
  return aside(picturePart(picture, 90, 68, context), context);
}

const asideWidth = ({ frame }: PrintContext): number => frame.body - RAIL - frame.label;
