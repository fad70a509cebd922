// Runs of a text that no line may part: a number with its unit, a part or sheet number with its hyphen, a date. Figures of the
// document are whole anyway; this is for those inside sentences and lists.
import { units } from '@baywright/language';

export interface Run {
  readonly text: string;
  readonly whole: boolean;
}

/** Symbols of units, in any language, and short ones that prose has; longest first, so that `L` is not read in `L/min`. */
const UNITS = [
  'gal',
  'qt',
  ...new Set(
    units
      .filter(({ isWord }) => !isWord)
      .flatMap(({ symbol, localSymbols = {} }) => [symbol, ...Object.values(localSymbols)]),
  ),
]
  .filter((symbol) => symbol.length > 0)
  .sort((a, b) => b.length - a.length)
  .map((symbol) => symbol.replace(/[.^$*+?()[\]{}|\\/]/g, '\\$&'))
  .join('|');
/** Units spelled out, in any language, with the part in capitals that nobody must take for another. */
const LOUD = '[A-Z]{3,}-[A-Za-z]+|[a-z]+-[A-Z]{3,}';
/** Letters and figures of Latin, Greek and the scripts after them: quicker to make than all of Unicode's. */
const LETTERS = 'A-Za-z0-9\\u00AA\\u00B5\\u00BA\\u00C0-\\u00D6\\u00D8-\\u00F6\\u00F8-\\u1FFF\\u2C00-\\uD7FF';
const WHOLE = new RegExp(
  `\\d[ \\u00A0](?:${UNITS}|${LOUD})(?![${LETTERS}])|\\b[A-Z]{1,4}-\\d+(?![${LETTERS}-])|\\b\\d{4}-\\d\\d-\\d\\d\\b`,
  'g',
);

/** The digits before the last one belong to the number, and so do its sign and what a tolerance is of. */
const NUMBER = /(?:[\d.,/]+[ \u00A0](?=±))?[±+−<>≤≥≈\d.,/]*$/;
/** So does the other end of a range: but not before a long unit, which needs a line for itself. */
const RANGE = /(?:[\d.,/]+[ \u00A0](?:(?:to|bis|a|à)[ \u00A0]|(?=±)))?[±+−<>≤≥≈\d.,/]*$/;

/** The text in runs, in order. Joined they are the text. */
export function runsOf(text: string): readonly Run[] {
  // Each of them has a figure: most texts have none.
  if (!/\d/.test(text)) return text === '' ? [] : [{ text, whole: false }];
  const runs: Run[] = [];
  let from = 0;
  for (const { 0: found, index } of text.matchAll(WHOLE)) {
    const before = found.includes('-') ? NUMBER : RANGE;
    const start = index - (before.exec(text.slice(from, index))?.[0].length ?? 0);
    if (start > from) runs.push({ text: text.slice(from, start), whole: false });
    from = index + found.length;
    runs.push({ text: text.slice(start, from), whole: true });
  }
  if (from < text.length) runs.push({ text: text.slice(from), whole: false });
  return runs;
}
