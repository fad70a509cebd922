// A frame to write in.
import { drawn, high, moved, type Part, together, words } from './set.js';

/** A blank to write in, with what belongs in it in small print. */
export function blank(width: number, height: number, label?: string): Part {
  const frame = drawn(height, (art, x, y) => art.frame(x, y, width, height, 0.75));
  return label === undefined
    ? frame
    : high(height, together(frame, moved(words(label, { size: 8.5 }, width - 2.4), 1.2, 1.2)));
}
