// Near words: for fixes, and for reading a slip as the word that was meant.
import { distance } from 'fastest-levenshtein';

/** At most three of the candidates that are near the word, the nearest first, in the order given among equals. */
export function nearest(word: string, candidates: Iterable<string>): string[] {
  const limit = Math.min(2, Math.floor(word.length / 3));
  const found: { text: string; edits: number }[] = [];
  for (const text of new Set(candidates)) {
    if (Math.abs(text.length - word.length) > limit || text === word) continue;
    const edits = isSwap(word, text) ? 1 : distance(word, text);
    if (edits <= limit) found.push({ text, edits });
  }
  return found
    .sort((a, b) => a.edits - b.edits)
    .slice(0, 3)
    .map(({ text }) => text);
}

/** The one candidate that is a single edit away: a letter more, less, other, or two exchanged. */
export function oneEditAway(word: string, candidates: Iterable<string>): string | undefined {
  let found: string | undefined;
  for (const text of candidates) {
    if (Math.abs(text.length - word.length) > 1 || text === word || text === found) continue;
    if (!isSwap(word, text) && distance(word, text) !== 1) continue;
    if (found !== undefined) return undefined;
    found = text;
  }
  return found;
}

/** Whether two neighbouring letters are exchanged. */
function isSwap(a: string, b: string): boolean {
  if (a.length !== b.length) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i += 1;
  return i < a.length - 1 && a[i] === b[i + 1] && a[i + 1] === b[i] && a.slice(i + 2) === b.slice(i + 2);
}
