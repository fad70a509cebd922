// Drawings on the page: inked with the page's own colours, so that they turn over in the dark.
import type { Head, HeadShape, OrderDiagram } from '../document/beside.js';
import { asSvg, type Drawing, type Inks } from '../document/drawing/drawing.js';
import { headDrawing, markDrawing } from '../document/drawing/heads.js';
import { orderDrawing, orderWidth } from '../document/drawing/order.js';
import { escapeText, type Markup, trusted } from './markup.js';

export const PAGE_INKS: Inks = { ink: 'var(--ink)', paper: 'var(--paper)' };

/** A drawing with what it says, or, without words, one that readers skip; `width` in pixels, else the style's. */
export function drawn(drawing: Drawing, name: string, alt?: string, width?: number): Markup {
  const role = alt ? `role="img" aria-label="${escapeText(alt)}"` : 'aria-hidden="true"';
  const size = width === undefined ? '' : ` width="${width}"`;
  return trusted(asSvg(drawing, `class="${name}" ${role}${size}`));
}

export const drawnHead = (head: Head, name = 'head', alt = head.label): Markup =>
  drawn(headDrawing(head, PAGE_INKS), name, alt);

export const drawnMark = (shape: HeadShape): Markup => drawn(markDrawing(shape, PAGE_INKS), 'mark-head');

/** Wide enough for its figures to be read: a long plate is wider than a flange. */
export const drawnOrder = (order: OrderDiagram): Markup =>
  drawn(orderDrawing(order, PAGE_INKS), 'order', order.alt, Math.round(orderWidth(order, 50) * PIXELS));

/** CSS pixels in a millimetre (CSS Values 4: 96 to the inch). */
const PIXELS = 96 / 25.4;
