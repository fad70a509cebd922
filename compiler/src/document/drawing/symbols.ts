// The safety alert symbol and the mandatory signs. The symbol stands beside DANGER, WARNING and CAUTION and never
// beside NOTICE (ANSI Z535.6, ISO 3864-2). The signs keep the meanings and the round field of the mandatory signs of
// ISO 7010 (M-series); the drawings are this project's own, in black and white.
import type { Protection } from '../blocks.js';
import type { Drawing, Inks } from './drawing.js';

/** Triangle with an exclamation mark cut out of it. */
export function alertDrawing(inks: Inks): Drawing {
  const body = `<path d="M50 3 98 88H2Z" fill="${inks.ink}" stroke="${inks.ink}" stroke-width="4" stroke-linejoin="round"/><path d="M44.5 30h11l-2.2 31h-6.6Z" fill="${inks.paper}"/><circle cx="50" cy="72" r="6" fill="${inks.paper}"/>`;
  return { width: 100, height: 91, body };
}

/** A mandatory sign: black field, white pictogram. */
export function protectionDrawing(sign: Protection, inks: Inks): Drawing {
  return {
    width: 100,
    height: 100,
    body: `<circle cx="50" cy="50" r="49" fill="${inks.ink}"/>${SIGNS[sign](inks)}`,
  };
}

const person = ({ paper }: Inks) =>
  `<circle cx="50" cy="42" r="21" fill="${paper}"/><path d="M19 84c3-14 15-19 31-19s28 5 31 19a49 49 0 0 1-62 0Z" fill="${paper}"/>`;

const SIGNS: Readonly<Record<Protection, (inks: Inks) => string>> = {
  gloves: ({ paper, ink }) =>
    `<path d="M34 62V33a4.5 4.5 0 0 1 9 0V22a4.5 4.5 0 0 1 9 0v-2a4.5 4.5 0 0 1 9 0v6a4.5 4.5 0 0 1 9 0v28l4-7a5 5 0 0 1 9 5L71 70H34Z" fill="${paper}"/><path d="M43 34v16M52 24v26M61 25v25" stroke="${ink}" stroke-width="1.6" fill="none"/><rect x="33" y="73" width="39" height="11" rx="2" fill="${paper}"/>`,
  eyes: (inks) =>
    `${person(inks)}<path d="M27 36h46v8c0 7-5 10-11 10s-10-4-12-9c-2 5-6 9-12 9s-11-3-11-10Z" fill="${inks.ink}"/><path d="M32 40h14v2c0 5-3 7-7 7s-7-2-7-6Zm22 0h14v3c0 4-3 6-7 6s-7-2-7-7Z" fill="${inks.paper}"/>`,
  ears: (inks) =>
    `${person(inks)}<path d="M26 40a24 26 0 0 1 48 0" fill="none" stroke="${inks.ink}" stroke-width="9"/><path d="M26 40a24 26 0 0 1 48 0" fill="none" stroke="${inks.paper}" stroke-width="4"/><rect x="20" y="34" width="13" height="21" rx="5" fill="${inks.paper}" stroke="${inks.ink}" stroke-width="2.5"/><rect x="67" y="34" width="13" height="21" rx="5" fill="${inks.paper}" stroke="${inks.ink}" stroke-width="2.5"/>`,
  face: (inks) =>
    `${person(inks)}<path d="M27 27h46v10l-3 26H30l-3-26Z" fill="${inks.paper}" stroke="${inks.ink}" stroke-width="3.5" stroke-linejoin="round"/><path d="M27 35h46" stroke="${inks.ink}" stroke-width="3.5"/><circle cx="42" cy="44" r="2.6" fill="${inks.ink}"/><circle cx="58" cy="44" r="2.6" fill="${inks.ink}"/>`,
  feet: ({ paper, ink }) =>
    `<path d="M33 20h22v28c0 6 6 8 14 11 9 3 14 6 14 13v5H33Z" fill="${paper}"/><path d="M33 80h50v6H33Z" fill="${paper}"/><path d="M66 58c-4 4-6 10-6 19" stroke="${ink}" stroke-width="2.5" fill="none"/><path d="M42 30h13M42 38h13M43 46h13" stroke="${ink}" stroke-width="2.2"/>`,
  lungs: (inks) =>
    `${person(inks)}<path d="M31 45q19-12 38 0c0 12-8 21-19 21s-19-9-19-21Z" fill="${inks.ink}"/><path d="M35 47q15-8 30 0c-1 9-7 15-15 15s-14-6-15-15Z" fill="${inks.paper}"/><circle cx="36" cy="59" r="7" fill="${inks.paper}" stroke="${inks.ink}" stroke-width="2.5"/><circle cx="64" cy="59" r="7" fill="${inks.paper}" stroke="${inks.ink}" stroke-width="2.5"/>`,
  clothing: ({ paper, ink }) =>
    `<path d="M38 18h24l16 8 8 26-12 4-5-13v45H31V43l-5 13-12-4 8-26Z" fill="${paper}"/><path d="M42 18q8 9 16 0M50 25v43M31 68h38M37 50h8M55 50h8" stroke="${ink}" stroke-width="2.4" fill="none"/>`,
  head: (inks) =>
    `${person(inks)}<path d="M24 36c0-15 11-24 26-24s26 9 26 24l6 4v4H18v-4Z" fill="${inks.paper}" stroke="${inks.ink}" stroke-width="3" stroke-linejoin="round"/><path d="M45 13v18M55 13v18" stroke="${inks.ink}" stroke-width="2.4"/>`,
};
