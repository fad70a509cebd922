// One name in two files that are used together.
import { defineDiagnostic } from './define.js';

export const hidesImport = defineDiagnostic<{
  readonly name: string;
  readonly first: string;
  readonly again: string;
}>({
  code: 'N103',
  name: 'hides-import',
  severity: 'warning',
  message: ({ name, first, again }) => `\`${name}\` is declared in ${first} and in ${again}`,
  advice: ({ name }) => `take one of the two out, or give it another name than ${name}`,
  why: `The name means the nearer entry, so the catalogue's figures for it no longer count here. Where that is meant, another name says so; where it is not, a change in the catalogue never arrives.`,
  wrong: `--- file: procedures/a.bay
procedure A-1: Bore, look at

use "../catalogue/van.bay"

places
  bore: Bore of the knuckle
# ^^^^ N103

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
