// What is drawn on a page of steps, under its text: rails, boxes to tick, frames, blanks. All of it is one picture,
// because the typesetter takes longer over a box of its own than over its text.
import { type Drawing, number } from '../document/drawing/drawing.js';
import { POINT } from './type/faces.js';

/** Millimetres from the left edge of the text and the top of the page's steps. */
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
}

interface LineLook {
  readonly paint?: string;
  /** Dash and gap in points. */
  readonly dash?: readonly [number, number];
}

export interface Canvas extends Art {
  /** The picture as SVG, its left edge at `left` and as wide and high as it says. */
  readonly svg: (left: number, width: number, height: number) => string;
}

export function openArt(): Canvas {
  // One path for each paint: a picture of a few paths is read faster than one of many shapes.
  const fills = new Map<string, string>();
  const strokes = new Map<string, string>();
  const drawings: string[] = [];
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
    svg: (left, width, height) =>
      `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${number(left)} 0 ${number(width)} ${number(height)}">${paths(fills)}${paths(strokes)}${drawings.join('')}</svg>`,
  };
}

const stroke = (weight: number, paint: string, dash?: readonly [number, number]): string =>
  `fill="none" stroke="${paint}" stroke-width="${number(weight * POINT)}"${dash ? ` stroke-dasharray="${dash.map((part) => number(part * POINT)).join(' ')}"` : ''}`;

const paths = (all: ReadonlyMap<string, string>): string =>
  [...all].map(([paint, path]) => `<path ${paint} d="${path}"/>`).join('');
