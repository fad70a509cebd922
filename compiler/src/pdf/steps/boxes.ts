// The boxes at the right of a line, in print.
import {
  type Beside,
  type BesideRenderers,
  type Head,
  type OrderDiagram,
  renderBeside,
  type TorqueStage,
} from '../../document/beside.js';
import { asSvg, type Drawing, PRINT_INKS } from '../../document/drawing/drawing.js';
import { headDrawing } from '../../document/drawing/heads.js';
import { orderDrawing, orderWidth } from '../../document/drawing/order.js';
import { type Figure, plainFigure, type Quantity } from '../../document/inline.js';
import { say } from '../../document/words.js';
import type { PrintContext } from '../context.js';
import { figureCode } from '../prose.js';
import { linesHigh, widthOf } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { figureRuns, type Style, textRuns } from '../type/runs.js';
import { call } from '../typst-code.js';
import { blank } from './blank.js';
import { HAND, SIDE } from './frame.js';
import { inspection, reading } from './readings.js';
import {
  drawing,
  drawn,
  high,
  type Look,
  moved,
  type Part,
  placed,
  prose,
  setText,
  stacked,
  together,
  words,
} from './set.js';

export function besidePart(beside: Beside, context: PrintContext): Part {
  return renderBeside(BESIDE, beside, context);
}

export function headSource(head: Head): string {
  return asSvg(headDrawing(head, PRINT_INKS));
}

/** A drawing that says something: readers hear what. */
export function saidPicture(what: Drawing, alt: string, width: number): Part {
  const height = (width * what.height) / what.width;
  return placed(height, (x, y) => call('pic', [x, y, asSvg(what), alt, width]));
}

/** The tightening order in a column so wide. */
export function orderPart(order: OrderDiagram, floor: number, most: number): { width: number; part: Part } {
  const width = Math.min(orderWidth(order, floor), most);
  return { width, part: saidPicture(orderDrawing(order, PRINT_INKS), order.alt, width) };
}

const TOOL = 15;

function torquePart(
  { head, count, stages, conditions }: Extract<Beside, { kind: 'torque' }>,
  { frame: { accent } }: PrintContext,
): Part {
  const counted = words(`${count} ×`, { size: 10, weight: 700, tabular: true }, TOOL, { align: 'center' });
  const tool = head
    ? stacked(1.2, [moved(saidPicture(headDrawing(head, PRINT_INKS), head.label, 11.5), 1.75, 0), counted])
    : counted;
  const figures = stacked(
    1.6,
    stages.map((stage, i) => {
      const part = stagePart(stage, SIDE - TOOL - 3.2);
      return i === 0
        ? part
        : together(
            drawn(0, (art, x, y) => art.line(x, y, x + SIDE - TOOL - 3.2, y, 0.5)),
            moved(part, 0, 1.6),
          );
    }),
  );
  const height = Math.max(tool.height + 3.2, figures.height + 3.6);
  const inside = together(
    moved(tool, 0, (height - tool.height) / 2),
    moved(figures, TOOL + 2.2, (height - figures.height) / 2),
    drawn(height, (art, x, y) => {
      art.frame(x, y, SIDE, height, 1.5, accent);
      art.line(x + TOOL, y, x + TOOL, y + height, 0.75, { paint: accent });
    }),
  );
  if (conditions.length === 0) return high(height, inside);
  const under = stacked(
    1.74,
    conditions.map((one) => prose(one, { size: 9.5, weight: 600 }, SIDE - 5)),
  );
  const all = under.height + 3;
  return together(
    inside,
    moved(under, 2.5, height + 1.5),
    drawn(height + all, (art, x, y) => {
      art.line(x, y + height, x + SIDE, y + height, 0.75, { paint: accent });
      art.frame(x, y + height, SIDE, all, 1.5, accent);
    }),
  );
}

function stagePart({ label, figure, unit, set }: TorqueStage, width: number): Part {
  const said = label ?? set?.joint;
  const head = said === undefined ? [] : [words(said, { size: 9.5, weight: 700 }, width)];
  if (!figure) return stacked(1.9, [...head, ...askedParts(unit ?? '', width)]);
  const torque = stacked(1.9, [...head, ...figureParts(figure, width)]);
  return set ? stacked(1.9, [torque, settingPart(set, width)]) : torque;
}

/** A blank with its unit behind it; below it where both do not fit. */
function askedParts(unit: string, width: number): readonly Part[] {
  const style: Style = { size: 12, weight: 700 };
  const behind = (said: string): Part =>
    high(9, together(blank(24, 9), moved(words(said, style, width - 26), 26, 3.2)));
  const isLong = fill(textRuns(`? ${unit}`, style), 1000).width > width - 26;
  return isLong ? [behind('?'), words(unit, style, width)] : [behind(`? ${unit}`)];
}

/** White on black: of two figures in a box this is the one that the hand sets. */
function settingPart({ label, figure }: NonNullable<TorqueStage['set']>, width: number): Part {
  const white = { white: true };
  const inside = stacked(1.9, [
    words(label, { size: 10.5, weight: 700 }, width, white),
    ...figureParts(figure, width, white),
  ]);
  const height = inside.height + 3.6;
  return together(
    drawn(height, (art, x, y) => art.fill(x - 2.2, y, SIDE - TOOL, height, 'black')),
    moved(inside, 0, 1.8),
  );
}

/** The value with its unit, large, and in the other system. */
function figureParts({ primary, secondary }: Quantity, width: number, look: Look = {}): readonly Part[] {
  const [size, small] = primary.value.length > 6 ? [15, 10] : [22, 12];
  return [
    setFigure(primary, size, small, width, look),
    ...(secondary ? [setOther(secondary, width, look)] : []),
  ];
}

/** The value large, its unit behind it; below it where both do not fit. */
function setFigure(
  { value, unit, loud }: Figure,
  size: number,
  small: number,
  width: number,
  look: Look,
): Part {
  const large: Style = { size, weight: 800, tabular: true };
  const behind: Style = { size: small, weight: 700 };
  const valueWide = widthOf(value, '800ExtraBold', size, true);
  const unitRuns = figureRuns({ value: '', unit, ...(loud === undefined ? {} : { loud }) }, behind);
  const unitWide = unit === '' ? 0 : fill(unitRuns, 1000).width;
  const unitCode = call('unit-text', [unit, loud]);
  if (valueWide + 1 + unitWide > width)
    return stacked(1.2, [
      setText(value, linesHigh(1, size), large, Math.max(width, valueWide + 1), look),
      setText(unitCode, linesHigh(1, small), behind, width, look),
    ]);
  // One text: readers hear the unit with the value.
  const code = call('large', [value, small, unitCode]);
  return setText(code, linesHigh(1, size), large, width + 1, look);
}

/** In one line, or the unit below the value: neither is parted. */
function setOther(figure: Figure, width: number, look: Look): Part {
  // White on black runs together when it is small.
  const style = { size: look.white ? 10.5 : 10, tabular: true };
  const isLong = fill(figureRuns(figure, style), 1000).width > width;
  return setText(
    figureCode(figure, isLong ? 'fig-lines' : 'fig'),
    linesHigh(isLong ? 2 : 1, style.size),
    style,
    width,
    look,
  );
}

const BESIDE: BesideRenderers<Part, PrintContext> = {
  socket: ({ head }) => {
    const label = words(head.label, { size: 9.5 }, SIDE - TOOL - 2.2);
    const height = Math.max(4.6, label.height);
    const tool = moved(drawing(headDrawing(head, PRINT_INKS), 7.4), (TOOL - 7.4) / 2, (height - 7.4) / 2);
    return high(height, together(tool, moved(label, TOOL + 2.2, (height - label.height) / 2)));
  },
  torque: torquePart,
  reading,
  inspection: ({ good, bad }) => inspection(good, bad),
  hold: (_, { words: said }) =>
    high(12, together(blank(26, 12, said.initials), moved(blank(26, 12, said.time), 28, 0))),
  clock: (clock, { words: said }) => {
    const title = words(
      `${plainFigure(clock.length)}, ${clock.name}`,
      { size: 10.5, weight: 700 },
      SIDE - 5,
      { white: true },
    );
    const bar = title.height + 3.2;
    const since = say(said.clockSince, { line: clock.from?.number ?? '' }).trim();
    const until = clock.sense === 'at least' ? said.clockNotBefore : said.clockNotAfter;
    const wide = (SIDE - 7) / 2;
    // Under the label is room for a gloved hand.
    const deep = Math.max(
      ...[since, until].map((one) => words(one, { size: 8.5 }, wide - 2.4).height + 2.2 + HAND),
    );
    const height = bar + deep + 4;
    return high(
      height,
      together(
        drawn(height, (art, x, y) => {
          art.fill(x, y, SIDE, bar, 'black');
          art.frame(x, y, SIDE, height, 1);
        }),
        moved(title, 2.5, 1.6),
        moved(blank(wide, deep, since), 2.5, bar + 2),
        moved(blank(wide, deep, until), 4.5 + wide, bar + 2),
      ),
    );
  },
  picture: ({ picture }, context) => picturePart(picture, 56, 42, context),
};

/** A picture as large as fits, in millimetres, without changing its shape. */
export function picturePart(
  picture: Extract<Beside, { kind: 'picture' }>['picture'],
  width: number,
  height: number,
  context: PrintContext,
): Part {
  const path = context.addPicture(picture);
  if (path === undefined) {
    const file = picture.name ?? picture.alt;
    const said = [
      { kind: 'strong', children: [{ kind: 'text', text: say(context.words.pictureLost, { file }) }] },
      { kind: 'text', text: ` ${picture.alt}` },
    ] as const;
    const note = prose(said, { size: 9.5 }, width - 5);
    const box = drawn(note.height + 5, (art, x, y) => {
      for (const [x1, y1, x2, y2] of edges(width, note.height + 5))
        art.line(x + x1, y + y1, x + x2, y + y2, 0.75, { dash: [2, 2] });
    });
    return together(box, moved(note, 2.5, 2.5));
  }
  const scale = Math.min(width / picture.width, height / picture.height);
  const [wide, deep] = [picture.width * scale, picture.height * scale];
  const photo = placed(deep, (x, y) => call('photo', [x, y, path, picture.alt, wide, deep]));
  const caption =
    picture.caption === undefined ? [] : [words(lettersKept(picture.caption), { size: 9 }, width)];
  return stacked(1, [photo, ...caption]);
}

/** `A king pin, B shims`: a letter of the picture stays with what it points at. */
export const lettersKept = (caption: string): string =>
  caption.replace(/(^|[\s(])([A-Z]) (?=\p{L})/gu, '$1$2\u00A0');

const edges = (width: number, height: number) =>
  [
    [0, 0, width, 0],
    [width, 0, width, height],
    [0, height, width, height],
    [0, 0, 0, height],
  ] as const;
