// A path that leads out of the library.
import { defineDiagnostic } from './define.js';

export const importOutside = defineDiagnostic<{ readonly path: string }>({
  code: 'N303',
  name: 'import-outside',
  severity: 'error',
  message: ({ path }) => `${path} leads outside the library`,
  advice: () => 'write a path from this file to one in the library',
  why: `A library is one folder that can be copied whole. What lies outside it is not read, on any machine.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Bore, look at

use "../../shared/van.bay"
#   ^^^^^^^^^^^^^^^^^^^^^^ N303

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
