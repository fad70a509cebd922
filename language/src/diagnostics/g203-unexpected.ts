// Something on a line that fits nowhere there.
import { defineDiagnostic } from './define.js';

export const unexpected = defineDiagnostic<{ readonly what: string; readonly hint: string | undefined }>({
  code: 'G203',
  name: 'unexpected',
  severity: 'error',
  message: ({ what }) => `${what} does not fit here`,
  advice: ({ hint }) => hint,
  why: `A line of code is a word, what it acts on, and clauses after commas. The rest of the clause is left out, so the checks may miss something.`,
  wrong: `procedure A-1: Mirror, clean

places
  glass: Mirror glass

inspection
  step: Clean the mirror
    clean glass twice
#               ^^^^^ G203`,
  right: `procedure A-1: Mirror, clean

places
  glass: Mirror glass

inspection
  step: Clean the mirror
    clean glass: Twice.`,
});
