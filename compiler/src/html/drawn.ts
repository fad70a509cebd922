// Drawings on the page: inked with the page's own colours, so that they turn over in the dark.
import type { Head, HeadShape, OrderDiagram } from '../document/beside.js';
import { asSvg, type Drawing, type Inks } from '../document/drawing/drawing.js';
import { headDrawing, markDrawing } from '../document/drawing/heads.js';
import { orderDrawing, orderWidth } from '../document/drawing/order.js';
import { type Child, el, escapeText, type Markup, trusted } from './markup.js';

export const PAGE_INKS: Inks = { ink: 'var(--ink)', paper: 'var(--paper)' };

/** A drawing with what it says, or, without words, one that readers skip; `width` in pixels, else the style's. */
export function drawn(drawing: Drawing, name: string, alt?: string, width?: number): Markup {
  const role = alt ? `role="img" aria-label="${escapeText(alt)}"` : 'aria-hidden="true"';
  const size = width === undefined ? '' : ` width="${width}"`;
  return trusted(asSvg(drawing, `class="${name}" ${role}${size}`));
}

/** A longer size is too small to read inside its head. */
const MOST_IN_HEAD = 3;
const isTooLong = ({ size }: Head): boolean => size.length > MOST_IN_HEAD;

export const drawnHead = (head: Head, name = 'head', alt = head.label): Markup =>
  drawn(headDrawing(isTooLong(head) ? { ...head, size: '' } : head, PAGE_INKS), name, alt);

/** A head and, where its size has no room inside, that below it. */
export const headWithSize = (head: Head): Child => [
  drawnHead(head),
  isTooLong(head) &&
    el('span', { class: 'size', 'aria-hidden': 'true' }, head.label.slice(head.label.indexOf(head.size))),
];

export const drawnMark = (shape: HeadShape): Markup => drawn(markDrawing(shape, PAGE_INKS), 'mark-head');

/** Wide enough for its figures to be read at arm's length, half as large again as on paper in the hand. */
export const drawnOrder = (order: OrderDiagram): Markup =>
  drawn(
    orderDrawing(order, PAGE_INKS),
    'order',
    order.alt,
    Math.round(Math.max(LEAST_ORDER, orderWidth(order, 0) * 1.5) * PIXELS),
  );

/** In millimetres. */
const LEAST_ORDER = 50;

/** CSS pixels in a millimetre (CSS Values 4: 96 to the inch). */
const PIXELS = 96 / 25.4;
