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

/** What stands at a place: a text for readers, one that nobody is read, or something drawn. */
type Leaf =
  | { readonly text: (x: number, y: number) => Raw }
  | { readonly sign: (x: number, y: number) => Raw }
  | { readonly draw: (art: Art, x: number, y: number) => void };

export interface Part {
  /** From the top of what it is a part of to its own foot. */
  readonly height: number;
  /** Its place in what it is a part of. */
  readonly x: number;
  readonly y: number;
  readonly of: Leaf | readonly Part[];
}

export const NOTHING: Part = { height: 0, x: 0, y: 0, of: [] };

/** How a text is set beyond its style. */
export interface Look {
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

/** Where it takes two lines, they are alike: the last word of a warning does not stand alone. */
export function balanced(what: Prose, style: Style, width: number): Part {
  const runs = proseRuns(what, style);
  if (fill(runs, width).count !== 2) return prose(what, style, width);
  let [short, long] = [width / 2, width];
  while (long - short > 2) {
    const middle = (short + long) / 2;
    if (fill(runs, middle).count === 2) long = middle;
    else short = middle;
  }
  return prose(what, style, long);
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
  return { height, x: 0, y: 0, of: look.silent ? { sign: at } : { text: at } };
}

/** Code that is told where it stands. */
export function placed(height: number, text: (x: number, y: number) => Raw): Part {
  return { height, x: 0, y: 0, of: { text } };
}

export function drawn(height: number, draw: (art: Art, x: number, y: number) => void): Part {
  return { height, x: 0, y: 0, of: { draw } };
}

export function drawing(what: Drawing, width: number): Part {
  return drawn((width * what.height) / what.width, (art, x, y) => art.drawing(x, y, width, what));
}

export function moved({ height, x, y, of }: Part, dx: number, dy: number): Part {
  return { height: height + dy, x: x + dx, y: y + dy, of };
}

/** Higher up, with as much room below as before. */
export const lifted = (part: Part, by: number): Part => ({ ...part, y: part.y - by });

/** Over each other, as high as the highest. */
export function together(...parts: readonly Part[]): Part {
  let height = 0;
  for (const part of parts) height = Math.max(height, part.height);
  return { height, x: 0, y: 0, of: parts };
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

/** Where a part goes: its drawings to `art`, what nobody is read to `signs`, both counted from the page. */
export interface Place {
  readonly art: Art;
  readonly signs: Raw[];
  /** Where the part begins on the page. */
  readonly top: number;
  /** Where what its texts are set in begins. */
  readonly left: number;
}

/** Gives the code of a part's texts. */
export function setPart(part: Part, { art, signs, top, left }: Place): Raw {
  const texts: Raw[] = [];
  const walk = ({ x, y, of }: Part, dx: number, dy: number): void => {
    if (!('text' in of || 'sign' in of || 'draw' in of)) {
      for (const one of of) walk(one, dx + x, dy + y);
      return;
    }
    if ('text' in of) texts.push(of.text(dx + x - left, dy + y));
    else if ('sign' in of) signs.push(of.sign(dx + x, top + dy + y));
    else of.draw(art, dx + x, top + dy + y);
  };
  walk(part, 0, 0);
  return sequence(texts);
}

/** Hundredths of a millimetre are enough for any printer. */
export const short = (value: number): number => Math.round(value * 100) / 100;
