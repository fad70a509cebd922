// A word with nothing after it where something must follow.
import { defineDiagnostic } from './define.js';

export const operandMissing = defineDiagnostic<{
  readonly word: string;
  readonly expected: string;
  /** What was said in other words than the language's. */
  readonly meant?: string;
}>({
  code: 'G204',
  name: 'operand-missing',
  severity: 'error',
  message: ({ word, expected }) => `${expected} must follow \`${word}\``,
  advice: ({ meant }) =>
    meant === undefined
      ? undefined
      : `did you mean \`${meant}\`? Figures stand in the entry, and what is done on lines of their own below`,
  why: `The word asks for more, and the line ends or goes on to something else. Where the value is not known yet, \`?\` keeps its place.`,
  wrong: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    held by
#   ^^^^^^^ G204`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    held by mirror-screw

fasteners
  mirror-screw: Mirror screw`,
});
