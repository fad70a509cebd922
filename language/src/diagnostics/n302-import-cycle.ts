// Files that use each other in a ring.
import { defineDiagnostic } from './define.js';

export const importCycle = defineDiagnostic<{ readonly way: readonly string[] }>({
  code: 'N302',
  name: 'import-cycle',
  severity: 'error',
  message: ({ way }) => `this leads back to this file: ${way.join(', ')}`,
  advice: () => 'take the line out, or move what both need to a file of its own',
  why: `Files that use each other in a ring have no order in which one builds on the other. What both need belongs in a file of its own.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Bore, look at

use "a.bay"
#   ^^^^^^^ N302

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
`,
  right: `--- file: procedures/a.bay
procedure A-1: Bore, look at

use "../catalogue/van.bay"

inspection
  step: Look at the bore
    clean bore
--- file: catalogue/van.bay
catalogue: Van

places
  bore: Bore
`,
});
