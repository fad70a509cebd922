// What is set at a known place: texts and pictures for the typesetter, and what is drawn under them. Made of parts whose
// heights are known, so that nothing is measured while a page is set. Millimetres everywhere, sizes of type in points.
import type { Drawing } from '../../document/drawing/drawing.js';
import type { Prose } from '../../document/inline.js';
import type { Art } from '../art.js';
import { proseCode } from '../prose.js';
import { linesHigh } from '../type/faces.js';
import { fill } from '../type/lines.js';
import { proseRuns, type Style, textRuns } from '../type/runs.js';
import { type Argument, call, type Raw, sequence } from '../typst-code.js';

/** Something with its place, from the upper left corner of what it is a part of. */
interface Placed<T> {
  readonly x: number;
  readonly y: number;
  readonly what: T;
}

export interface Part {
  readonly height: number;
  readonly texts: readonly Placed<(x: number, y: number) => Raw>[];
  readonly drawn: readonly Placed<(art: Art, x: number, y: number) => void>[];
  /** Texts that nobody is read aloud. */
  readonly signs: readonly Placed<(x: number, y: number) => Raw>[];
}

export const NOTHING: Part = { height: 0, texts: [], drawn: [], signs: [] };

/** How a text is set beyond its style. */
interface Look {
  readonly white?: boolean;
  readonly align?: 'center' | 'right';
  /** Says nothing to a reader that is not there to see: a mere help of the eye. */
  readonly silent?: boolean;
}

export function prose(what: Prose, style: Style, width: number, look: Look = {}): Part {
  return setText(
    proseCode(what),
    linesHigh(fill(proseRuns(what, style), width).count, style.size),
    style,
    width,
    look,
  );
}

export function words(what: string, style: Style, width: number, look: Look = {}): Part {
  return setText(what, linesHigh(fill(textRuns(what, style), width).count, style.size), style, width, look);
}

/** Code whose height is known. */
export function setText(code: Argument, height: number, style: Style, width: number, look: Look = {}): Part {
  const { size, weight = 400, tabular = false, italic = false } = style;
  const named: Record<string, Argument> = {
    ...(look.white ? { fill: { raw: 'white' } } : {}),
    ...(look.align ? { align: { raw: look.align } } : {}),
    ...(tabular ? { 'number-width': 'tabular' } : {}),
    ...(italic ? { style: 'italic' } : {}),
  };
  const at = (x: number, y: number) =>
    call(look.silent ? 'sign' : 'at', [short(x), short(y), short(width), size, weight, code], named);
  const placedAt = [{ x: 0, y: 0, what: at }];
  return { ...NOTHING, height, ...(look.silent ? { signs: placedAt } : { texts: placedAt }) };
}

/** Code that is told where it stands. */
export function placed(height: number, code: (x: number, y: number) => Raw): Part {
  return { ...NOTHING, height, texts: [{ x: 0, y: 0, what: code }] };
}

export function drawn(height: number, draw: (art: Art, x: number, y: number) => void): Part {
  return { ...NOTHING, height, drawn: [{ x: 0, y: 0, what: draw }] };
}

export function drawing(what: Drawing, width: number): Part {
  return drawn((width * what.height) / what.width, (art, x, y) => art.drawing(x, y, width, what));
}

export function moved(part: Part, dx: number, dy: number): Part {
  const move = <T>({ x, y, what }: Placed<T>): Placed<T> => ({ x: x + dx, y: y + dy, what });
  const { height, texts, drawn, signs } = part;
  return { height: height + dy, texts: texts.map(move), drawn: drawn.map(move), signs: signs.map(move) };
}

/** Over each other, as high as the highest. */
export function together(...parts: readonly Part[]): Part {
  return {
    height: Math.max(0, ...parts.map(({ height }) => height)),
    texts: parts.flatMap(({ texts }) => texts),
    drawn: parts.flatMap(({ drawn }) => drawn),
    signs: parts.flatMap(({ signs }) => signs),
  };
}

/** One below the other. */
export function stacked(gap: number, parts: readonly Part[]): Part {
  let y = 0;
  const all = parts.map((part, i) => {
    const at = moved(part, 0, y + (i > 0 ? gap : 0));
    y = at.height;
    return at;
  });
  return together(...all);
}

/** With room below, or of a height that is larger than what stands in it. */
export const high = (height: number, part: Part): Part => ({ ...part, height });

export function codeOf(part: Part, left = 0): Raw {
  return sequence(part.texts.map(({ x, y, what }) => what(x - left, y)));
}

/** Its silent texts, counted from the top of the page. */
export function signsOf(part: Part, top: number): readonly Raw[] {
  return part.signs.map(({ x, y, what }) => what(x, top + y));
}

export function draw(part: Part, art: Art, top: number): void {
  for (const { x, y, what } of part.drawn) what(art, x, top + y);
}

/** Hundredths of a millimetre are enough for any printer. */
export const short = (value: number): number => Math.round(value * 100) / 100;
