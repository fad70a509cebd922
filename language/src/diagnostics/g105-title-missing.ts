// An entry, step or operation without a title.
import { defineDiagnostic } from './define.js';

export const titleMissing = defineDiagnostic<{ readonly head: string }>({
  code: 'G105',
  name: 'title-missing',
  severity: 'error',
  message: ({ head }) => `\`${head}\` has no title`,
  advice: () => 'write a colon and what the technician calls it',
  why: `The guide prints titles, not the short names that the checker works with. Without one the technician reads nothing.`,
  wrong: `procedure A-1: Mirror, replace

parts
  mirror
# ^^^^^^ G105`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror`,
});
