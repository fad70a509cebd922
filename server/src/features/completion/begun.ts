// A phrase of several words whose first are typed already: `held |` goes on with `by`, and is not begun again.
import type { Offer } from './answer.js';
import type { Cursor } from './cursor.js';

/** The offers that go on with what stands before the cursor, and the cursor as they replace it; undefined where none does. */
export function goingOn(
  offers: readonly Offer[],
  cursor: Cursor,
): { offers: Offer[]; cursor: Cursor } | undefined {
  for (const words of FIRST_WORDS) {
    const begun = words.exec(cursor.before)?.[1];
    const going = begun === undefined ? [] : offers.filter((o) => goesOn(o, begun));
    if (begun === undefined || going.length === 0) continue;
    const { replaces } = cursor;
    return {
      offers: going,
      cursor: { ...cursor, replaces: { start: replaces.start - begun.length, end: replaces.end } },
    };
  }
  return undefined;
}

/** Two words before one: `until level at` goes on from `level` too. */
const FIRST_WORDS = [/(?:^|[\s,])([\p{L}-]+ [\p{L}-]+ )$/u, /(?:^|[\s,])([\p{L}-]+ )$/u];

function goesOn({ label, insert = label }: Offer, begun: string): boolean {
  return label.startsWith(begun) && insert.startsWith(begun);
}
