// L306: a refrigerant charge with no tolerance.
import { defineDiagnostic } from './define.js';

const catalogue = (line: string) => `catalogue: Air conditioning

sources
  S-1: Air conditioning sheet, issue 1

fluids
  cab-refrigerant: Refrigerant
    refrigerant R-1234yf
${line}
`;

export const chargeWithoutTolerance = defineDiagnostic<{ readonly name: string; readonly mass: string }>({
  code: 'L306',
  name: 'charge-without-tolerance',
  severity: 'question',
  message: (d) => `how far may the charge of \`${d.name}\` be off ${d.mass}?`,
  advice: () => 'the plate gives it: `mass 540 ±15 g`',
  why: `A small system is right within a few grams. Without the tolerance nobody can say from the reading on the machine whether the charge is good.`,
  wrong: catalogue('    mass 540 g, per "S-1"\n#        ^^^^^ L306'),
  right: catalogue('    mass 540 ±15 g, per "S-1"'),
});
