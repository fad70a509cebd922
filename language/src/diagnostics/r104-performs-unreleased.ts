// R104: performs unreleased.
import { defineDiagnostic } from './define.js';

export const performsUnreleased = defineDiagnostic<{
  readonly number: string;
  readonly status: string;
  readonly own: string;
}>({
  code: 'R104',
  name: 'performs-unreleased',
  severity: 'warning',
  message: (d) => `this procedure is ${d.own}, and ${d.number} that it performs from is ${d.status}`,
  advice: (d) => `have ${d.number} released first, or set this one back to draft`,
  why: `The guide prints the performed steps as if they were its own. Steps that nobody has released go out under the initials of those who released this one.`,
  wrong: `--- file: a.bay
procedure A-1: Mirror, replace
status released by KM, TR on 2026-10-05

inspection
  perform mirror-look from A-2
# ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ R104
--- file: b.bay
procedure A-2: Mirror, look at
status draft

places
  mirror-glass: Mirror glass

inspection
  operation mirror-look: Look at the mirror
    step: Look at the mirror
      clean mirror-glass
`,
  right: `--- file: a.bay
procedure A-1: Mirror, replace
status released by KM, TR on 2026-10-05

inspection
  perform mirror-look from A-2
--- file: b.bay
procedure A-2: Mirror, look at
status released by KM, TR on 2026-10-05

places
  mirror-glass: Mirror glass

inspection
  operation mirror-look: Look at the mirror
    step: Look at the mirror
      clean mirror-glass
`,
});
