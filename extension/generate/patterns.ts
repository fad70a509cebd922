// Regular expressions of the editor grammar, in the dialect of Oniguruma, which TextMate grammars use.

/** A name, a code, a thread: letters and digits of any script, joined by one of `- . · / ×` or an apostrophe. */
export const NAME = "[\\p{L}][\\p{L}\\p{N}]*(?:[-.·/×’'][\\p{L}\\p{N}]+)*";

/** The colon that ends the code of a line: not between two digits. */
export const COLON = '(?:(?<!\\d):|:(?!\\d))';

/** Code without its ending colon: anything but a colon, colons in quotes and between digits aside. */
export const CODE = '(?:"[^"\\n]*"|(?<=\\d):(?=\\d)|[^:\\n])*?';

/** A comment: `#` followed by a space, another `#` or nothing. */
export const COMMENT = '(?:^|\\G)[ \\t]*(#(?=[ \\t#]|$).*)$';

/** `1 1/2`, `3/4`, `14 300`, `1,5`, `.5`, `½`. */
export const NUMBER =
  '(?:\\d+[ -]\\d+/\\d+|\\d+/\\d+|\\d{1,3}(?:[ \\u00A0\\u202F]\\d{3})+(?:[.,]\\d+)?(?!\\d)|\\d+(?:[.,]\\d+)?|[.,]\\d+)[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞]';

/** One of these words, the longest first, as whole words: `on` does not start `on-board`. */
export function oneOf(words: readonly string[]): string {
  const longestFirst = [...new Set(words)].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  const spaced = longestFirst.map((word) => literal(word).replaceAll(' ', '[ \\t]+'));
  return `(?<![\\p{L}\\p{N}\\-])(?:${spaced.join('|')})(?![\\p{L}\\p{N}]|[-.·/×’'][\\p{L}\\p{N}])`;
}

/** One of these unit spellings, the longest first, ending where a unit may end. */
export function oneUnit(spellings: readonly string[]): string {
  const longestFirst = [...new Set(spellings)].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  return `(?:${longestFirst.map(literal).join('|')})(?![\\p{L}\\p{N}·-])`;
}

function literal(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
}
