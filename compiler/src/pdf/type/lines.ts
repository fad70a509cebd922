// How many lines a text takes. The typesetter breaks lines itself, at the first place that no longer fits; here fewer
// places count as breaks than it knows, so that a text never takes more room than was kept for it.
import { POINT, stepWidth } from './faces.js';
import type { Run } from './runs.js';

/** What a line must be narrower by to count as fitting: computed in another order, sums differ in the last digits. */
const HAIR = 0.01;

/** After these no line ends, and before those, even at a space (Unicode Standard Annex 14, LB13 and LB14). */
const OPENING = /[([{“‘«„‚¿¡]/;
const CLOSING = /[)\]}”’»!?.,;:/…"']/;

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
    widest = Math.max(widest, line);
    [spaces, word] = [0, 0];
  };
  let last = '';
  for (const { text, face, size, tabular, whole } of runs) {
    let before = 0;
    for (let i = 0; i < text.length; i++) {
      const code = text.codePointAt(i) ?? 0;
      const character = String.fromCodePoint(code);
      const moved = stepWidth(face, before, code, tabular) * size * POINT;
      const space = !whole && isSpace(code);
      if (space && !OPENING.test(last) && !CLOSING.test(text[i + 1] ?? '')) endWord();
      if (isHyphen(last) && !whole && LETTER.test(character)) endWord();
      // Where no line may end, a space is a part of the word.
      if (space && word === 0) spaces += moved;
      else word += moved;
      if (code > 0xffff) i += 1;
      before = code;
      last = character;
    }
  }
  endWord();
  return { count, width: widest };
}

const isSpace = (code: number): boolean => code === 0x20 || code === 0x200b || code === 0x0a;
const LETTER = /\p{L}/u;
const isHyphen = (character: string): boolean => character === '-' || character === '–' || character === '—';
