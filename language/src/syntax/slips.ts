// Slips of the fingers: a word with one letter more, less or other, or two exchanged.
import { editDistance } from '../vocabulary/near.js';

/** The candidate that differs in its capitals alone, or the one a single edit away when there is just one. */
export function oneEditAway(word: string, candidates: Iterable<string>): string | undefined {
  let found: string | undefined;
  const small = word.toLowerCase();
  for (const text of candidates) {
    if (text === small && text !== word) return text;
    if (Math.abs(text.length - word.length) > 1 || text === found) continue;
    if (editDistance(word, text, 1) !== 1 || isOtherCase(word, text)) continue;
    if (found !== undefined) return undefined;
    found = text;
  }
  return found;
}

/** A capital at the start is a sentence's, unless only the case differs: `Then` is no slip for `when`. */
function isOtherCase(word: string, text: string): boolean {
  const first = word.charAt(0);
  const isCapital = first !== first.toLowerCase();
  return isCapital && text.charAt(0) !== first && text.toLowerCase() !== word.toLowerCase();
}
