// A known word on a line where it does not belong.
import { CONTEXT_WORDS } from '../vocabulary/heads.js';
import { defineDiagnostic } from './define.js';

export const wordOutOfPlace = defineDiagnostic<{
  readonly word: string;
  readonly where: string;
  readonly goes: string;
}>({
  code: 'G202',
  name: 'word-out-of-place',
  severity: 'error',
  message: ({ word, where }) => `\`${word}\` does not stand ${where}`,
  advice: ({ word, goes }) =>
    `\`${word}\` goes ${goes}${goes === CONTEXT_WORDS.work ? ', such as `removal`' : ''}`,
  why: `Words mean something only in their place: a clause says something about the entry above it, a verb does something in a step. Out of its place the line is left out of the checks.`,
  wrong: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
  held by mirror-screw
# ^^^^^^^ G202

fasteners
  mirror-screw: Mirror screw`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
    held by mirror-screw

fasteners
  mirror-screw: Mirror screw`,
});
