// Marks: those that the library gives its things, then those that the checks and the starter pack know.
import { STARTER_MARKS } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import { type Offer, value } from './answer.js';

export function markOffers(snapshot: Snapshot): Offer[] {
  const found = new Set<string>();
  for (const path of snapshot.shelf.paths())
    for (const [, marks = ''] of (snapshot.file(path)?.text ?? '').matchAll(MARKED))
      for (const mark of marks.split(',')) found.add(mark.trim());
  const known = Object.keys(STARTER_MARKS).filter((mark) => !found.has(mark));
  return [...[...found].sort(), ...known].map((mark) => {
    const docs = STARTER_MARKS[mark];
    return { ...value(mark, snapshot.say.mark), ...(docs === undefined ? {} : { docs }) };
  });
}

/** The marks on a line of an entry: words with commas, up to the end of the line. */
const MARKED = /^[ \t]+(?:[^:#\r\n]*,[ \t]*)?marked[ \t]+((?:[\p{L}\p{N}-]+(?:[ \t]*,[ \t]*)?)+)[ \t]*$/gmu;
