// The rail at the left of the steps: what is off the vehicle, and what is on and waits for its torque.
import type { Rail } from '../../document/blocks.js';
import type { Art } from '../art.js';
import { type Frame, RAIL } from './frame.js';

export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly rail: Rail;
}

/** A band as wide as the number of things off, left of its spine; a broken line: on, and not yet torqued. */
export function drawRails(all: readonly Stretch[], art: Art, frame: Frame, left = 0): void {
  const { accent, tint, railUnit } = frame;
  const joined: Stretch[] = [];
  for (const one of all) {
    const last = joined.at(-1);
    if (last && last.rail.off === one.rail.off && last.rail.loose === one.rail.loose)
      joined[joined.length - 1] = { ...last, to: one.to };
    else joined.push(one);
  }
  for (const { from, to, rail } of joined) {
    const end = to + 0.1;
    const band = rail.off * railUnit;
    const spine = left + RAIL;
    const edge = spine - band;
    if (rail.off > 0) {
      art.fill(edge, from, band, end - from, tint);
      art.line(edge, from, edge, end, 0.75, { paint: accent });
    }
    if (rail.loose > 0) {
      const at = edge - rail.loose * railUnit;
      art.line(at, from, at, end, 0.9, { paint: accent, dash: [2, 1.6] });
    }
    art.line(spine, from, spine, end, 1, { paint: accent });
  }
}
