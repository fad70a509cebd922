// Tools, supplies and gear in the order of use: what the verb was used with before, then what is made for it. Behind
// `raise vehicle with` a jack is looked for, not the paint pen.
import type { Thing, VerbDef } from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Offer } from './answer.js';

export function aidsFirst(snapshot: Snapshot, verb: VerbDef, offers: readonly Offer[]): Offer[] {
  const names = new Set(offers.map((offer) => offer.label));
  const uses = namesWith(snapshot, verb.word, names);
  const { scope } = snapshot.job();
  const suits = (thing: Thing): boolean => verb.suits?.some((clause) => thing.clauses.has(clause)) ?? false;
  const rank = ({ label }: Offer): number => {
    const thing = scope.resolve(label);
    return (uses.get(label) ?? 0) * 10 + (thing && suits(thing) ? 1 : 0);
  };
  return [...offers].sort((a, b) => rank(b) - rank(a));
}

/** How often names stand on lines of a verb, in this document and in the first of its library. */
function namesWith(snapshot: Snapshot, verb: string, names: ReadonlySet<string>): Map<string, number> {
  const found = new Map<string, number>();
  const lines = new RegExp(`^[ \\t]+${verb} ([^:\\r\\n]*)`, 'gm');
  const texts = snapshot.shelf
    .paths()
    .slice(0, MOST)
    .map((path) => snapshot.file(path)?.text ?? '');
  for (const text of [snapshot.text, ...texts])
    for (const [, line = ''] of text.matchAll(lines))
      for (const name of line.split(/[\s,]+/))
        if (names.has(name)) found.set(name, (found.get(name) ?? 0) + 1);
  return found;
}

/** Enough files to tell the habits of a shop, few enough for a key press. */
const MOST = 60;
