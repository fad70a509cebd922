// Something on a line that fits nowhere there.
import { defineDiagnostic } from './define.js';

export const unexpected = defineDiagnostic<{ readonly what: string; readonly hint: string | undefined }>({
  code: 'G203',
  name: 'unexpected',
  severity: 'error',
  message: ({ what }) => `${what} does not fit here`,
  advice: ({ hint }) => hint,
  why: `A line of code is a word, what it acts on, and clauses after commas. The rest of the clause is left out, so the checks may miss something.`,
  wrong: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
  glass: Mirror glass

removal
  step: Take the mirror off
    remove glass mirror
#                ^^^^^^ G203`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
  glass: Mirror glass

removal
  step: Take the mirror off
    remove glass, mirror`,
});
