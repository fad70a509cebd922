// A word with nothing after it where something must follow.
import { defineDiagnostic } from './define.js';

export const operandMissing = defineDiagnostic<{
  readonly word: string;
  readonly expected: string;
  /** What was said in other words, or the other way round. */
  readonly meant?: string;
  /** Where the rest of it goes. */
  readonly more?: string | undefined;
}>({
  code: 'G204',
  name: 'operand-missing',
  severity: 'error',
  message: ({ word, expected }) => `${expected} must follow \`${word}\``,
  advice: ({ meant, more }) =>
    meant === undefined ? undefined : `did you mean \`${meant}\`?${more === undefined ? '' : ` ${more}`}`,
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
