// The vehicle from above, front at the top, with the worked corners filled: which side, at a glance.
import type { Drawing, Inks } from './drawing.js';

export type Corner = 'fl' | 'fr' | 'rl' | 'rr';

export function planDrawing(corners: readonly Corner[], { ink, paper }: Inks): Drawing {
  const wheels = (Object.keys(WHEELS) as Corner[])
    .map((corner) => {
      const worked = corners.includes(corner);
      const [x, y, w, h] = worked ? grown(WHEELS[corner]) : WHEELS[corner];
      return `<rect x="${x}" y="${y}" width="${w}" height="${h}" rx="2" fill="${worked ? ink : paper}" stroke="${ink}" stroke-width="1.6"/>`;
    })
    .join('');
  const line = `fill="none" stroke="${ink}"`;
  const body = `<path d="M14 12q0-8 8-8h16q8 0 8 8v80q0 4-4 4H18q-4 0-4-4Z" fill="${paper}" stroke="${ink}" stroke-width="2"/><path d="M18 27q12-5 24 0l-3-9q-9-3-18 0Z" ${line} stroke-width="1.5"/><path d="M17 36h26M17 92h26M30 36v56" ${line} stroke-width="1"/>`;
  return { width: 60, height: 100, body: wheels + body };
}

type Box = readonly [number, number, number, number];
const WHEELS: Readonly<Record<Corner, Box>> = {
  fl: [5, 14, 9, 17],
  fr: [46, 14, 9, 17],
  rl: [5, 70, 9, 17],
  rr: [46, 70, 9, 17],
};

/** A worked wheel is drawn larger, outwards, so that it shows without colour and from a distance. */
function grown([x, y, w, h]: Box): Box {
  return [x < 30 ? x - 3 : x, y - 2, w + 3, h + 4];
}
