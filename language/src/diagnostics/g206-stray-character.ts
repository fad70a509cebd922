// A character that no line of code has.
import { defineDiagnostic } from './define.js';

export const strayCharacter = defineDiagnostic<{ readonly character: string }>({
  code: 'G206',
  name: 'stray-character',
  severity: 'error',
  message: ({ character }) => `\`${character}\` has no meaning in code`,
  advice: () => 'take it out; text for the technician goes after a colon',
  why: `Before the colon a line holds words, numbers, units, quoted text and commas. Other signs come in by a slip or from a pasted text.`,
  wrong: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  step: Clean the mirror
    clean mirror;
#               ^ G206`,
  right: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  step: Clean the mirror
    clean mirror`,
});
