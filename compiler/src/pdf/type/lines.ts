// How many lines a text takes. The typesetter breaks lines itself, at the first place that no longer fits; here fewer
// places count as breaks than it knows, so that a text never takes more room than was kept for it.
import { POINT, stepWidth, wordWidth } from './faces.js';
import type { Run } from './runs.js';

/** What a line must be narrower by to count as fitting: computed in another order, sums differ in the last digits. */
const HAIR = 0.01;

/** After these no line ends, and before those, even at a space (Unicode Standard Annex 14, LB13 and LB14). */
const OPENING = codes('([{“‘«„‚¿¡');
const CLOSING = codes(')]}”’»!?.,;:/…"\'');
const HYPHENS = codes('-–—');
const SPACES = codes(' \u200B\n');

function codes(characters: string): ReadonlySet<number> {
  return new Set([...characters].map((character) => character.codePointAt(0) ?? 0));
}

export interface Lines {
  readonly count: number;
  /** Of the widest line, in millimetres. */
  readonly width: number;
}

/** Fills lines of a width in millimetres. `first` is taken from the first line. */
export function fill(runs: readonly Run[], width: number, first = 0): Lines {
  let [count, widest] = [1, 0];
  // The line so far, the spaces behind it, and the word that is growing.
  let [line, spaces, word] = [first, 0, 0];
  const endWord = () => {
    if (word === 0) return;
    if (line > 0 && line + spaces + word > width - HAIR) {
      count += 1;
      line = word;
    } else line += spaces + word;
    // A word wider than the column may be parted at places that are not known here.
    if (word > width) count += Math.ceil((2 * word) / width);
    widest = Math.max(widest, line);
    [spaces, word] = [0, 0];
  };
  let last = 0;
  for (const { text, face, size, tabular, whole } of runs) {
    const scale = size * POINT;
    let before = 0;
    for (let i = 0; i < text.length; ) {
      const code = text.charCodeAt(i);
      if (!whole && SPACES.has(code)) {
        const moved = stepWidth(face, before, code, tabular) * scale;
        if (!OPENING.has(last) && !CLOSING.has(text.charCodeAt(i + 1))) endWord();
        // Where no line may end, a space is a part of the word.
        if (word === 0) spaces += moved;
        else word += moved;
        last = code;
        i += 1;
      } else {
        if (HYPHENS.has(last) && !whole && isLetter(code)) endWord();
        const end = whole ? text.length : wordEnd(text, i);
        const part = text.slice(i, end);
        const joint = stepWidth(face, before, code, tabular) - stepWidth(face, 0, code, tabular);
        word += (wordWidth(part, face, tabular) + joint) * scale;
        last = text.charCodeAt(end - 1);
        i = end;
      }
      before = last;
    }
  }
  endWord();
  return { count, width: widest };
}

/** Of Latin, or of a script after it: others do not stand in print. */
const isLetter = (code: number): boolean =>
  (code >= 65 && code <= 90) ||
  (code >= 97 && code <= 122) ||
  (code >= 0xc0 && code !== 0xd7 && code < 0x2000);

/** Up to the next space, or behind the next hyphen. */
function wordEnd(text: string, from: number): number {
  for (let i = from; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (SPACES.has(code)) return i;
    if (HYPHENS.has(code)) return i + 1;
  }
  return text.length;
}
