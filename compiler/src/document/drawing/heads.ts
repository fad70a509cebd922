// Heads of fasteners from above, as the wrench meets them, with the size inside. The shape is the key: the hand
// finds the socket by its outline.
import type { Head, HeadShape } from '../beside.js';
import { type Drawing, type Inks, number, points, svgText, TYPE_FAMILY } from './drawing.js';

/** Outline centred on `cx`, `cy` with radius `r` to the farthest point. */
export function headOutline(shape: HeadShape, cx: number, cy: number, r: number, paint: string): string {
  return OUTLINES[shape](cx, cy, r, paint);
}

/** A head 100 units wide with its size inside, drawn with lines of `weight` units. */
export function headDrawing(head: Head, inks: Inks, weight = 4): Drawing {
  const paint = `fill="none" stroke="${inks.ink}" stroke-width="${number(weight)}" stroke-linejoin="round"`;
  const body = headOutline(head.shape, 50, 50, 48 - weight / 2, paint);
  return { width: 100, height: 100, body: body + sizeText(head.size, inks.ink) };
}

/** A small head to mark with a pencil. */
export function markDrawing(shape: HeadShape, inks: Inks): Drawing {
  return headDrawing({ shape, size: '', label: '' }, inks, 5);
}

function sizeText(size: string, ink: string): string {
  if (size === '') return '';
  // Long sizes (`E18`, `13/16`) shrink until they clear the outline.
  const fontSize = size.length <= 2 ? 38 : size.length === 3 ? 30 : size.length === 4 ? 24 : 20;
  return `<text x="50" y="${number(50 + fontSize * 0.355)}" font-family="${TYPE_FAMILY}" font-weight="700" font-size="${fontSize}" text-anchor="middle" fill="${ink}">${svgText(size)}</text>`;
}

type Outline = (cx: number, cy: number, r: number, paint: string) => string;

const ring: Outline = (cx, cy, r, paint) =>
  `<circle cx="${number(cx)}" cy="${number(cy)}" r="${number(r)}" ${paint}/>`;

function polygon(corners: number, turn: number): Outline {
  return (cx, cy, r, paint) => {
    const list = Array.from({ length: corners }, (_, i): [number, number] => {
      const angle = turn + (i * 2 * Math.PI) / corners;
      return [cx + r * Math.cos(angle), cy + r * Math.sin(angle)];
    });
    return `<polygon points="${points(list)}" ${paint}/>`;
  };
}

/** Six round lobes (ISO 10664): a wave around the circle. */
const hexalobular: Outline = (cx, cy, r, paint) => {
  const list = Array.from({ length: 60 }, (_, i): [number, number] => {
    const angle = (i * 2 * Math.PI) / 60;
    const reach = r * (0.9 + 0.1 * Math.cos(6 * angle));
    return [cx + reach * Math.cos(angle), cy + reach * Math.sin(angle)];
  });
  return `<polygon points="${points(list)}" ${paint}/>`;
};

/** Two hexagons laid over each other. */
const twelvePoint: Outline = (cx, cy, r, paint) => {
  const list = Array.from({ length: 24 }, (_, i): [number, number] => {
    const angle = (i * Math.PI) / 12;
    const reach = i % 2 === 0 ? r : r * 0.9;
    return [cx + reach * Math.cos(angle), cy + reach * Math.sin(angle)];
  });
  return `<polygon points="${points(list)}" ${paint}/>`;
};

/** Two cuts that leave the middle free for the size. */
const slot: Outline = (cx, cy, r, paint) =>
  `${ring(cx, cy, r, paint)}<path d="M${number(cx - r * 0.86)} ${number(cy)}h${number(r * 0.3)}M${number(cx + r * 0.56)} ${number(cy)}h${number(r * 0.3)}" ${paint}/>`;

const cross: Outline = (cx, cy, r, paint) =>
  `${slot(cx, cy, r, paint)}<path d="M${number(cx)} ${number(cy - r * 0.9)}v${number(r * 0.34)}M${number(cx)} ${number(cy + r * 0.56)}v${number(r * 0.34)}" ${paint}/>`;

const hexagon = polygon(6, 0);
const OUTLINES: Readonly<Record<HeadShape, Outline>> = {
  hex: hexagon,
  square: polygon(4, Math.PI / 4),
  hexalobular,
  'twelve-point': twelvePoint,
  'hex-socket': (cx, cy, r, paint) => ring(cx, cy, r, paint) + hexagon(cx, cy, r * 0.8, paint),
  slot,
  cross,
  round: ring,
};
