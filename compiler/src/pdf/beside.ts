// The boxes at the right of a line, in print.
import {
  type Beside,
  type BesideRenderers,
  type Head,
  type OrderDiagram,
  renderBeside,
  type TorqueStage,
} from '../document/beside.js';
import { asSvg, PRINT_INKS } from '../document/drawing/drawing.js';
import { headDrawing } from '../document/drawing/heads.js';
import { orderDrawing, orderWidth } from '../document/drawing/order.js';
import { type Prose, plainFigure } from '../document/inline.js';
import type { Picture } from '../document/picture.js';
import { say } from '../document/words.js';
import type { PrintContext } from './context.js';
import { figureCode, proseCode, textCode } from './prose.js';
import { type Argument, call, type Raw } from './typst-code.js';

export function besideCode(beside: Beside, context: PrintContext): Raw {
  return renderBeside(BESIDE, beside, context);
}

export function headSource(head: Head): string {
  return asSvg(headDrawing(head, PRINT_INKS));
}

export function orderArgument(order: OrderDiagram | undefined, floor: number): Argument {
  if (!order) return undefined;
  return { source: asSvg(orderDrawing(order, PRINT_INKS)), alt: order.alt, width: orderWidth(order, floor) };
}

/** A picture as large as fits, in millimetres, without changing its shape. */
export function pictureCode(picture: Picture, width: number, height: number, context: PrintContext): Raw {
  const path = context.addPicture(picture);
  if (path === undefined) {
    const file = picture.name ?? picture.alt;
    return call('lost-photo', [say(context.words.pictureLost, { file }), picture.alt]);
  }
  const scale = Math.min(width / picture.width, height / picture.height);
  const size = (length: number) => Math.round(length * scale * 100) / 100;
  return call('photo', [path, picture.alt, picture.caption, size(picture.width), size(picture.height)]);
}

/** One stage of a torque as the template's record of label, value, unit and other system. */
export function stageArgument(stage: TorqueStage): Argument {
  const figure = stage.figure?.primary;
  return {
    label: stage.label,
    value: figure?.value,
    unit: figure?.unit ?? stage.unit ?? '',
    loud: figure?.loud,
    other: stage.figure?.secondary ? figureCode(stage.figure.secondary) : undefined,
  };
}

const optional = (prose: Prose | undefined): Argument => (prose ? proseCode(prose) : undefined);

const BESIDE: BesideRenderers<Raw, PrintContext> = {
  socket: ({ head }) => call('socket', [headSource(head), head.label]),
  torque: ({ head, count, stages, conditions }) =>
    call('torque', [
      head ? headSource(head) : undefined,
      head?.label,
      count,
      stages.map(stageArgument),
      conditions.map(proseCode),
    ]),
  reading: (reading, { words }) =>
    call('reading', [], {
      unit: reading.units[0]?.label ?? '',
      low: reading.low !== undefined,
      high: reading.high !== undefined,
      limit: reading.limit.length > 0 ? proseCode(reading.limit) : textCode(words.limitOpen),
      fresh: optional(reading.fresh),
      other: optional(reading.other),
      ways: reading.ways.map(proseCode),
      places: reading.places,
    }),
  inspection: ({ good, bad }) => call('inspection', [proseCode(good), proseCode(bad)]),
  hold: () => ({ raw: 'hold-blanks' }),
  clock: (clock, { words }) =>
    call('clock', [
      plainFigure(clock.length),
      clock.name,
      say(words.clockSince, { line: clock.from?.number ?? '' }).trim(),
      clock.sense === 'at least' ? words.clockNotBefore : words.clockNotAfter,
    ]),
  picture: ({ picture }, context) => pictureCode(picture, 56, 42, context),
  question: ({ ask, unit }) => call('ask', [proseCode(ask), unit ?? '']),
};
