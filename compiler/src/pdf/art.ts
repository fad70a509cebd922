// What is drawn on a page under its text: rails, boxes to tick, frames, blanks, and the words that no reader needs to hear,
// such as the running head. All of it is one picture, because the typesetter takes longer over a box of its own than over
// its text.
import { type Drawing, number, svgText, TYPE_FAMILY } from '../document/drawing/drawing.js';
import { POINT } from './type/faces.js';

/** Millimetres from the left edge of the text and from a top that all of it agrees on. */
export interface Art {
  readonly fill: (x: number, y: number, width: number, height: number, paint: string) => void;
  /** `weight` in points. */
  readonly frame: (
    x: number,
    y: number,
    width: number,
    height: number,
    weight: number,
    paint?: string,
  ) => void;
  readonly line: (x: number, y: number, toX: number, toY: number, weight: number, look?: LineLook) => void;
  /** `width` in millimetres. */
  readonly drawing: (x: number, y: number, width: number, drawing: Drawing) => void;
  /** One line, its foot at `y`; nobody is read it aloud. */
  readonly text: (x: number, y: number, text: string, look: TextLook) => void;
}

export interface TextLook {
  /** Points. */
  readonly size: number;
  readonly weight?: number;
  readonly paint?: string;
  /** Which end of the line `x` is. */
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Degrees, about its place; and the room between letters, in points. */
  readonly turned?: number;
  readonly tracking?: number;
  /** Under all the rest. */
  readonly under?: true;
}

interface LineLook {
  readonly paint?: string;
  /** Dash and gap in points. */
  readonly dash?: readonly [number, number];
}

export interface Canvas extends Art {
  /** The picture as SVG, its upper left corner at a place. */
  readonly svg: (left: number, top: number, width: number, height: number) => string;
}

export function openArt(): Canvas {
  // One path for each paint: a picture of a few paths is read faster than one of many shapes.
  const fills = new Map<string, string>();
  const strokes = new Map<string, string>();
  const drawings: string[] = [];
  const under: string[] = [];
  const add = (to: Map<string, string>, paint: string, path: string) =>
    to.set(paint, (to.get(paint) ?? '') + path);
  const rectangle = (x: number, y: number, width: number, height: number) =>
    `M${number(x)} ${number(y)}h${number(width)}v${number(height)}h${number(-width)}z`;
  return {
    fill: (x, y, width, height, paint) => add(fills, `fill="${paint}"`, rectangle(x, y, width, height)),
    frame: (x, y, width, height, weight, paint = 'black') =>
      add(strokes, stroke(weight, paint), rectangle(x, y, width, height)),
    line: (x, y, toX, toY, weight, { paint = 'black', dash } = {}) =>
      add(strokes, stroke(weight, paint, dash), `M${number(x)} ${number(y)}L${number(toX)} ${number(toY)}`),
    drawing: (x, y, width, { width: units, body }) =>
      drawings.push(
        `<g transform="translate(${number(x)} ${number(y)}) scale(${String(Math.round((width / units) * 1e5) / 1e5)})">${body}</g>`,
      ),
    text: (x, y, text, look) => (look.under ? under : drawings).push(textElement(x, y, text, look)),
    svg: (left, top, width, height) =>
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${number(left)} ${number(top)} ${number(width)} ${number(height)}" font-family="${TYPE_FAMILY}">${under.join('')}${paths(fills)}${paths(strokes)}${drawings.join('')}</svg>`,
  };
}

function textElement(
  x: number,
  y: number,
  text: string,
  { size, weight = 400, paint = 'black', anchor = 'start', turned, tracking }: TextLook,
): string {
  const more = [
    ...(anchor === 'start' ? [] : [`text-anchor="${anchor}"`]),
    ...(turned === undefined ? [] : [`transform="rotate(${number(turned)} ${number(x)} ${number(y)})"`]),
    ...(tracking === undefined ? [] : [`letter-spacing="${number(tracking * POINT)}"`]),
  ];
  return `<text x="${number(x)}" y="${number(y)}" font-size="${String(Math.round(size * POINT * 1e4) / 1e4)}" font-weight="${weight}" fill="${paint}" ${more.join(' ')}>${svgText(text)}</text>`;
}

const stroke = (weight: number, paint: string, dash?: readonly [number, number]): string =>
  `fill="none" stroke="${paint}" stroke-width="${number(weight * POINT)}"${dash ? ` stroke-dasharray="${dash.map((part) => number(part * POINT)).join(' ')}"` : ''}`;

const paths = (all: ReadonlyMap<string, string>): string =>
  [...all].map(([paint, path]) => `<path ${paint} d="${path}"/>`).join('');
