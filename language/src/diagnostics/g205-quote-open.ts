// A quotation mark that is not closed.
import { defineDiagnostic } from './define.js';

export const quoteOpen = defineDiagnostic<Record<string, never>>({
  code: 'G205',
  name: 'quote-open',
  severity: 'error',
  message: () => 'this quotation mark is never closed',
  advice: () => 'close it with a second mark',
  why: `Without its end the rest of the line counts as quoted, and the clauses in it are lost.`,
  wrong: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    number "MA-3
#          ^^^^^ G205`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    number "MA-3"`,
});
