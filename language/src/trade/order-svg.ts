/**
 * The order diagram of a guide: numbered heads, the first one black, a broken path from each to the next. Black
 * on white, self-contained, legible at 30 mm for up to about 16 heads.
 */

import type { TighteningOrder } from './order.js';
import type { Point } from './order-grid.js';
import { orderSentence, type SentenceLanguage } from './order-sentence.js';

/** How to draw it. Head numbers are turns unless positions are asked for. */
export interface DiagramOptions {
  readonly numbers?: 'turn' | 'position';
  /** Language of the text alternative. */
  readonly language?: SentenceLanguage;
  /** Printed width, mm; the drawing scales to it. */
  readonly widthMm?: number;
}

const SIZE = 100;
/** With more heads the path is a knot in the middle that hides more than it shows: the numbers do alone. */
const PATH_UP_TO = 12;

/** Draws an order as an SVG string with a text alternative; the same input gives the same bytes. */
export function orderSvg(order: TighteningOrder, options: DiagramOptions = {}): string {
  const radius = headRadius(order);
  const reach = SIZE / 2 - radius - 2;
  const lift = order.shape === 'grid' ? stretch(order.positions) : 1;
  const places = order.positions.map((p) => ({
    x: SIZE / 2 + (p.x - 0.5) * 2 * reach,
    y: SIZE / 2 + (p.y - 0.5) * 2 * reach * lift,
  }));
  const trimmed = trim(order, places, radius);
  const at = (position: number): Point => places[position - 1] ?? { x: SIZE / 2, y: SIZE / 2 };
  const path =
    order.count > PATH_UP_TO
      ? ''
      : order.order.map((p, i) => `${i === 0 ? 'M' : 'L'}${num(at(p).x)} ${num(at(p).y)}`).join('');
  const heads = order.order
    .map((p, i) => head(at(p), radius, options.numbers === 'position' ? p : i + 1, i === 0))
    .join('');
  const alternative = escapeXml(orderSentence(order, options.language ?? 'en'));
  const width = options.widthMm ?? 36;
  const tall = width * (trimmed.height / SIZE);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${num(width)}mm" height="${num(tall)}mm" ` +
    `viewBox="0 ${num(trimmed.top)} ${SIZE} ${num(trimmed.height)}" role="img" aria-label="${alternative}">` +
    `<title>${alternative}</title>` +
    (path && `<path d="${path}" fill="none" stroke="#000" stroke-width="1.2" stroke-dasharray="3 2.2"/>`) +
    `${heads}</svg>`
  );
}

/** The order as plain text for a terminal: the turns where the heads lie. */
export function orderText(order: TighteningOrder): string {
  const columns = Math.max(13, Math.min(45, Math.ceil(order.count * 3.2)));
  // A character is about twice as tall as wide.
  const lines = order.shape === 'grid' ? distinct(order.positions) : Math.ceil(columns / 2);
  const grid = Array.from({ length: lines }, () => Array.from({ length: columns + 2 }, () => ' '));
  const top = Math.min(...order.positions.map((p) => p.y));
  const deep = Math.max(...order.positions.map((p) => p.y)) - top || 1;
  order.order.forEach((position, i) => {
    const p = order.positions[position - 1] ?? { x: 0.5, y: 0.5 };
    const line = grid[Math.round(((p.y - top) / deep) * (lines - 1) + 1e-9)];
    const turn = String(i + 1);
    const from = Math.round(p.x * (columns - turn.length) + 1e-9);
    for (let k = 0; k < turn.length; k++) if (line) line[from + k] = turn.charAt(k);
  });
  const drawn = grid.map((line) => line.join('').trimEnd());
  return drawn.join('\n');
}

/** Heads as large as neighbours allow, 11 at most (the head mark of the guide), so that numbers stay legible. */
function headRadius(order: TighteningOrder): number {
  let gap = Number.POSITIVE_INFINITY;
  order.positions.forEach((a, i) => {
    for (const b of order.positions.slice(i + 1)) gap = Math.min(gap, Math.hypot(a.x - b.x, a.y - b.y));
  });
  // Neighbours stand gap·2·reach apart with reach = 48 − r; keep r under 0.42 of that.
  const limit = Number.isFinite(gap) ? (0.42 * gap * 2 * (SIZE / 2 - 2)) / (1 + 0.84 * gap) : 11;
  return Math.max(3, Math.min(11, limit));
}

/** Two long rows lie too close for a path between them: draw rows apart until the height is 0.4 of the width. */
function stretch(positions: readonly Point[]): number {
  const ys = positions.map((p) => p.y);
  const height = Math.max(...ys) - Math.min(...ys);
  return height > 0 ? Math.max(1, 0.4 / height) : 1;
}

/** Grids are wide and low: cut the empty height away. */
function trim(
  order: TighteningOrder,
  places: readonly Point[],
  radius: number,
): { top: number; height: number } {
  if (order.shape === 'circle') return { top: 0, height: SIZE };
  const top = Math.min(...places.map((p) => p.y)) - radius - 2;
  return { top, height: Math.max(...places.map((p) => p.y)) + radius + 2 - top };
}

function head(p: Point, radius: number, label: number, first: boolean): string {
  const corners = Array.from({ length: 6 }, (_, i) => {
    const turn = (Math.PI / 3) * i;
    return `${num(p.x + radius * Math.cos(turn))},${num(p.y + radius * Math.sin(turn))}`;
  }).join(' ');
  const size = Math.min(13, radius * 1.18);
  return (
    `<polygon points="${corners}" fill="${first ? '#000' : '#fff'}" stroke="#000" stroke-width="${num(Math.min(1.6, radius / 6))}"/>` +
    `<text x="${num(p.x)}" y="${num(p.y + size * 0.355)}" font-family="Atkinson Hyperlegible Next, sans-serif" font-weight="700" ` +
    `font-size="${num(size)}" text-anchor="middle" fill="${first ? '#fff' : '#000'}">${label}</text>`
  );
}

function distinct(positions: readonly Point[]): number {
  return new Set(positions.map((p) => p.y.toFixed(6))).size;
}

function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function escapeXml(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/"/g, '&quot;');
}
