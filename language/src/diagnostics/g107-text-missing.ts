// A colon, or a word that takes text, with no text.
import { defineDiagnostic } from './define.js';

export const textMissing = defineDiagnostic<{ readonly head: string }>({
  code: 'G107',
  name: 'text-missing',
  severity: 'error',
  message: ({ head }) => `\`${head}\` has no text`,
  advice: () => 'write the text after the colon, or indented below it',
  why: `The line announces something for the technician to read, and nothing follows: a blank line in the guide, or a warning that warns of nothing.`,
  wrong: `procedure A-1: Mirror, replace

removal
  step: Take the mirror off
    caution:
#   ^^^^^^^ G107`,
  right: `procedure A-1: Mirror, replace

removal
  step: Take the mirror off
    caution: The glass breaks easily.`,
});
