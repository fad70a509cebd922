// L102: two grades on one entry that no fluid can meet together.
import { defineDiagnostic } from './define.js';
import { oilCatalogue } from './oil-example.js';

export const gradesDisagree = defineDiagnostic<{ readonly name: string; readonly reason: string }>({
  code: 'L102',
  name: 'grades-disagree',
  severity: 'error',
  message: (d) => `\`${d.name}\` cannot be both: ${d.reason}`,
  why: `The entry names two fluids at once, so half of the technicians will take the wrong can. Often one clause was copied from the entry above.`,
  wrong: oilCatalogue('SAE 5W-30, API GL-5', '#              ^^^^^^^^ L102', 'fill 1.9 L, per "S-1"'),
  right: oilCatalogue('SAE 75W-90, API GL-5', 'fill 1.9 L, per "S-1"'),
});
