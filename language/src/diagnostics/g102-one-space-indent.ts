// A line that misses its level by one space.
import { defineDiagnostic } from './define.js';

export const oneSpaceIndent = defineDiagnostic<{ readonly written: number; readonly meant: number }>({
  code: 'G102',
  name: 'one-space-indent',
  severity: 'warning',
  message: ({ written, meant }) => `this line starts ${spaces(written)} in, one off its level at ${meant}`,
  why: `One space is too little to show a level, and is nearly always a slip. The line is read on the level it missed.`,
  wrong: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
   glass: Mirror glass
#  ^ G102`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror
  glass: Mirror glass`,
});

function spaces(count: number): string {
  return count === 1 ? '1 space' : `${count} spaces`;
}
