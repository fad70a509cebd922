// A line on a level that nothing opened.
import { defineDiagnostic } from './define.js';

export const unevenIndent = defineDiagnostic<{ readonly written: number; readonly meant: number }>({
  code: 'G103',
  name: 'uneven-indent',
  severity: 'warning',
  message: ({ written, meant }) =>
    `this line starts ${spaces(written)} in, on no open level; it is read at ${meant}`,
  why: `The lines of a block start in the same column. A line that stands between two levels could belong to either.`,
  wrong: `procedure A-1: Mirror, replace

parts
    mirror: Door mirror
  glass: Mirror glass
# ^ G103`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
  glass: Mirror glass`,
});

function spaces(count: number): string {
  return count === 1 ? '1 space' : `${count} spaces`;
}
