// R201: entry unused.
import { defineDiagnostic } from './define.js';

export const entryUnused = defineDiagnostic<{ readonly name: string }>({
  code: 'R201',
  name: 'entry-unused',
  severity: 'hint',
  tag: 'unused',
  message: (d) => `nothing in the library uses \`${d.name}\``,
  why: `A catalogue that keeps what no procedure needs grows until nobody dares to change it. Or the procedure that should use the entry declares its own, and the two drift apart.`,
  wrong: `--- file: catalogue/mirrors.bay
catalogue: Mirrors

places
  mirror-glass: Mirror glass
  mirror-foot: Mirror foot
# ^^^^^^^^^^^ R201
--- file: procedures/a.bay
procedure A-1: Mirror, look at

use "../catalogue/mirrors.bay"

inspection
  step: Look at the mirror
    clean mirror-glass
`,
  right: `--- file: catalogue/mirrors.bay
catalogue: Mirrors

places
  mirror-glass: Mirror glass
--- file: procedures/a.bay
procedure A-1: Mirror, look at

use "../catalogue/mirrors.bay"

inspection
  step: Look at the mirror
    clean mirror-glass
`,
});
