// The tightening order as a picture: every head in its place with its turn, a broken line from turn to turn, the
// first head black. Legible when printed 30 mm wide.
import type { OrderDiagram } from '../beside.js';
import { type Drawing, type Inks, number, TYPE_FAMILY } from './drawing.js';
import { headOutline } from './heads.js';

/** More heads than this and the broken line hides more than it shows; the numbers remain. */
const PATH_LIMIT = 16;
const LARGEST_HEAD = 12;

export function orderDrawing(order: OrderDiagram, inks: Inks): Drawing {
  const { width, height } = frame(order);
  const radius = headRadius(order, width, height);
  const places = order.heads
    .map((head) => ({ turn: head.turn, ...place(head, width, height, radius + 4) }))
    .sort((a, b) => a.turn - b.turn);
  const heads = places.map((head) => drawHead(order, head, radius, inks)).join('');
  return { width, height, body: outline(order, width, height, inks.ink) + path(places, inks.ink) + heads };
}

/** Width in millimetres at which the numbers are at least 8.5 pt high, at least `floor`. */
export function orderWidth(order: OrderDiagram, floor: number): number {
  const { width, height } = frame(order);
  const radius = headRadius(order, width, height);
  return Math.max(floor, Math.ceil((3 * width) / (radius * FIGURE)));
}

/** Height of the figures as a share of the head's radius. */
const FIGURE = 1.15;

function frame(order: OrderDiagram): { width: number; height: number } {
  return order.aspect >= 1
    ? { width: 100 * order.aspect, height: 100 }
    : { width: 100, height: 100 / order.aspect };
}

function place(head: { x: number; y: number }, width: number, height: number, margin: number) {
  return { x: margin + head.x * (width - 2 * margin), y: margin + head.y * (height - 2 * margin) };
}

/** As large as fits between the nearest two heads. */
function headRadius(order: OrderDiagram, width: number, height: number): number {
  const places = order.heads.map((head) => place(head, width, height, LARGEST_HEAD + 4));
  let nearest = Number.POSITIVE_INFINITY;
  places.forEach((a, i) => {
    for (const b of places.slice(i + 1)) nearest = Math.min(nearest, Math.hypot(a.x - b.x, a.y - b.y));
  });
  return Math.min(LARGEST_HEAD, nearest * 0.46);
}

function outline(order: OrderDiagram, width: number, height: number, ink: string): string {
  const paint = `fill="none" stroke="${ink}" stroke-width="1"`;
  if (order.outline === 'plate')
    return `<rect x="0.5" y="0.5" width="${number(width - 1)}" height="${number(height - 1)}" rx="6" ${paint}/>`;
  const [cx, cy, r] = [width / 2, height / 2, Math.min(width, height) / 2 - 0.5];
  return `<circle cx="${number(cx)}" cy="${number(cy)}" r="${number(r)}" ${paint}/><circle cx="${number(cx)}" cy="${number(cy)}" r="${number(r * 0.26)}" ${paint}/>`;
}

function path(places: readonly { x: number; y: number }[], ink: string): string {
  if (places.length < 2 || places.length > PATH_LIMIT) return '';
  const d = places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${number(x)} ${number(y)}`).join('');
  return `<path d="${d}" fill="none" stroke="${ink}" stroke-width="1.2" stroke-dasharray="3 2.2"/>`;
}

function drawHead(
  order: OrderDiagram,
  head: { x: number; y: number; turn: number },
  radius: number,
  inks: Inks,
): string {
  const first = head.turn === 1;
  const paint = `fill="${first ? inks.ink : inks.paper}" stroke="${inks.ink}" stroke-width="1.6"`;
  // Drives cut into the head would cross the figure: only the outline counts here.
  const shape =
    order.shape === 'hex' || order.shape === 'square' || order.shape === 'hexalobular'
      ? order.shape
      : 'round';
  const size = radius * FIGURE;
  return `${headOutline(shape, head.x, head.y, radius, paint)}<text x="${number(head.x)}" y="${number(head.y + size * 0.355)}" font-family="${TYPE_FAMILY}" font-weight="700" font-size="${number(size)}" text-anchor="middle" fill="${first ? inks.paper : inks.ink}">${head.turn}</text>`;
}
