// A line of code of a length that no one writes.
import { defineDiagnostic } from './define.js';

export const lineTooLong = defineDiagnostic<{ readonly length: number }>({
  code: 'G111',
  name: 'line-too-long',
  severity: 'error',
  message: ({ length }) => `this line has ${length} characters before its colon and is not read`,
  why: `Such a line is a pasted table or a damaged file. It is kept as it is.`,
  wrong: `procedure A-1: Mirror, replace

sides left
parts
  mirror: Door mirror`,
  right: `procedure A-1: Mirror, replace

parts
  mirror: Door mirror`,
});
