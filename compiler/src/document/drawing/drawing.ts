// Line drawings as SVG, made in code and shared by the page and the print. Two inks only: what is drawn must be
// readable in black and white, and the page swaps them in the dark.

export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** SVG elements, without the frame. */
  readonly body: string;
}

/** Colours of a drawing, as SVG paint: `black` and `white` in print, custom properties on the page. */
export interface Inks {
  readonly ink: string;
  readonly paper: string;
}

export const PRINT_INKS: Inks = { ink: 'black', paper: 'white' };

/** Family of the shipped type, for figures inside drawings. */
export const TYPE_FAMILY = 'Atkinson Hyperlegible Next';

/** The drawing as a file or as an element; `attributes` go into the frame as they are. */
export function asSvg(drawing: Drawing, attributes = ''): string {
  const space = attributes === '' ? '' : ' ';
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${number(drawing.width)} ${number(drawing.height)}"${space}${attributes}>${drawing.body}</svg>`;
}

/** A number with at most two decimals, the same on every machine. */
export function number(value: number): string {
  return String(Math.round(value * 100) / 100);
}

export function points(list: readonly (readonly [number, number])[]): string {
  return list.map(([x, y]) => `${number(x)},${number(y)}`).join(' ');
}

/** Text as SVG character data. */
export function svgText(value: string): string {
  return value
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
