// A file that is used and is not in the library.
import { defineDiagnostic } from './define.js';

export const importNotFound = defineDiagnostic<{ readonly path: string; readonly near: string | undefined }>({
  code: 'N301',
  name: 'import-not-found',
  severity: 'error',
  message: ({ path }) => `there is no file ${path} in the library`,
  advice: ({ near }) =>
    near === undefined ? 'paths are written from this file, with forward slashes' : `the nearest is ${near}`,
  why: `Everything that the file would have declared is missing here: names, figures and house rules.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Bore, look at

use "../catalogue/vans.bay"
#   ^^^^^^^^^^^^^^^^^^^^^^^ N301

inspection
  step: Look at the bore
    clean bore
--- file: catalogue/van.bay
catalogue: Van

places
  bore: Bore
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
