// R112: performs withdrawn.
import { defineDiagnostic } from './define.js';

export const performsWithdrawn = defineDiagnostic<{ readonly number: string }>({
  code: 'R112',
  name: 'performs-withdrawn',
  severity: 'warning',
  message: (d) => `${d.number}, which this line performs from, is withdrawn`,
  advice: () => 'perform it from the procedure that took its place',
  tag: 'deprecated',
  why: `A procedure is withdrawn because nobody should work by it any more. Its steps still go out in every guide that performs them.`,
  wrong: `--- file: a.bay
procedure A-1: Mirror, replace

inspection
  perform mirror-look from A-2
# ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ R112
--- file: b.bay
procedure A-2: Mirror, look at
status withdrawn by KM, TR on 2026-10-05

places
  mirror-glass: Mirror glass

inspection
  operation mirror-look: Look at the mirror
    step: Look at the mirror
      clean mirror-glass
`,
  right: `--- file: a.bay
procedure A-1: Mirror, replace

inspection
  perform mirror-look from A-3
--- file: b.bay
procedure A-3: Mirror, look at

places
  mirror-glass: Mirror glass

inspection
  operation mirror-look: Look at the mirror
    step: Look at the mirror
      clean mirror-glass
`,
});
