// Text that goes on below a line whose text has begun after the colon.
import { defineDiagnostic } from './define.js';

export const textBelowRemark = defineDiagnostic<{ readonly head: string }>({
  code: 'G110',
  name: 'text-below-remark',
  severity: 'error',
  message: ({ head }) => `text cannot go on below the text of \`${head}\``,
  advice: () => 'end the line above with its colon and put all the text below',
  why: `The text of such a line stands either after its colon or wholly below it, under a colon that ends the line. Deeper lines under a line with text are read as code.`,
  wrong: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  step: Clean the mirror
    clean mirror: Hold it by the rim.
      Then wipe it.
#     ^^^^^^^^^^^^^ G110`,
  right: `procedure A-1: Mirror, clean

places
  mirror: Door mirror

inspection
  step: Clean the mirror
    clean mirror:
      Hold it by the rim.
      Then wipe it.`,
});
