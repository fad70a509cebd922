// Nearest known words, for "did you mean". Swapped neighbours are the commonest slip of the fingers, so they
// count as one edit, which the usual Levenshtein libraries do not offer.

/**
 * The known words fewest edits away from a word, nearest first, at most `most`. One edit is allowed up to four
 * letters, two up to nine, three beyond; equal distances go by the longer common beginning, then by alphabet.
 */
export function nearest(word: string, known: Iterable<string>, most = 3): string[] {
  const limit = editsAllowed(word);
  const found: { text: string; edits: number; shared: number }[] = [];
  for (const text of new Set(known)) {
    if (text === word) continue;
    const edits = editDistance(word, text, limit);
    // A word that would be changed all through is no likeness: `ab` is not near `x`.
    if (edits <= limit && edits < Math.max(word.length, text.length) - 1) {
      found.push({ text, edits, shared: sharedStart(word, text) });
    }
  }
  found.sort((a, b) => a.edits - b.edits || b.shared - a.shared || (a.text < b.text ? -1 : 1));
  return found.slice(0, most).map((candidate) => candidate.text);
}

/**
 * `nearest` among the names of a shop's things. They are made of words, and a word in place of another is another thing:
 * `inlet-hose` is no slip of `outlet-hose`, `bolt-2` none of `bolt-1`, nor `drive-bolt` of `drive-belt` where some name has a
 * `bolt`. So the slip is within a word, no letter of it was meant as it stands, and figures are as they were.
 */
export function nearestName(name: string, known: Iterable<string>, most = 3): string[] {
  const names = [...known];
  const near = nearest(name, names, names.length);
  if (near.length === 0) return [];
  const meant = new Set(names.flatMap(wordsOf));
  return near.filter((other) => isSlip(name, other, meant)).slice(0, most);
}

function isSlip(name: string, other: string, meant: ReadonlySet<string>): boolean {
  if (name.replaceAll(NO_FIGURE, '') !== other.replaceAll(NO_FIGURE, '')) return false;
  const words = wordsOf(name);
  const others = wordsOf(other);
  // A hyphen too many or too few.
  if (words.length !== others.length) return words.join('') === others.join('');
  return words.every((word, i) => {
    const its = others[i] ?? '';
    if (word === its) return true;
    return !meant.has(word) && nearest(word, [its]).length > 0;
  });
}

const NO_FIGURE = /\P{N}+/gu;
const wordsOf = (name: string): string[] => name.split('-');

/**
 * `nearest` among the words of the language, where a word cut short counts too: `torq` is `torque`. Not for names: they
 * are made of each other, and `wheel` is not a short way to write `wheel-nut`.
 */
export function nearestWord(word: string, known: Iterable<string>, most = 3): string[] {
  const words = [...new Set(known)];
  const near = nearest(word, words, most);
  if (near.length > 0 || word.length < SHORTEST_CUT) return near;
  const begun = words.filter((text) => text.startsWith(word) && text !== word);
  // What begins half the words says nothing about which is meant.
  return begun.length > most ? [] : begun.sort();
}

/** Fewer letters begin too many words. */
const SHORTEST_CUT = 3;

/** How many edits still make a likeness of a word of this length. */
function editsAllowed(word: string): number {
  return word.length <= 4 ? 1 : word.length <= 9 ? 2 : 3;
}

/**
 * Edits (insert, delete, replace, swap of neighbours, no letter edited twice) from one word to the other;
 * `limit + 1` as soon as it is clear that there are more. Optimal string alignment: G. Navarro, "A guided tour to
 * approximate string matching", ACM Computing Surveys 33 (2001), section 4; from memory, laws tested.
 */
export function editDistance(a: string, b: string, limit = Number.MAX_SAFE_INTEGER): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let twoBack: number[] = [];
  let back = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const here = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let edits = Math.min(
        at(back, column) + 1,
        at(here, column - 1) + 1,
        at(back, column - 1) + (same ? 0 : 1),
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        edits = Math.min(edits, at(twoBack, column - 2) + 1);
      }
      here.push(edits);
    }
    if (Math.min(...here) > limit && Math.min(...back) > limit) return limit + 1;
    twoBack = back;
    back = here;
  }
  return Math.min(at(back, b.length), limit + 1);
}

function at(row: readonly number[], column: number): number {
  return row[column] ?? Number.MAX_SAFE_INTEGER;
}

function sharedStart(a: string, b: string): number {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length += 1;
  return length;
}
