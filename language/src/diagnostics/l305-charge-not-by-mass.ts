// L305: a refrigerant charge that is not given by mass.
import { defineDiagnostic } from './define.js';

const catalogue = (line: string) => `catalogue: Air conditioning

sources
  S-1: Air conditioning sheet, issue 1

fluids
  cab-refrigerant: Refrigerant
    refrigerant R-1234yf
${line}
`;

export const chargeNotByMass = defineDiagnostic<{ readonly name: string }>({
  code: 'L305',
  name: 'charge-not-by-mass',
  severity: 'error',
  message: (d) => `the charge of \`${d.name}\` is a mass, with what it may be off: \`mass 540 ±15 g\``,
  why: `Refrigerant is charged by weight: the plate under the bonnet gives grams, and neither pressure nor volume says how much is in (common practice; 40 CFR 82 subpart B on the machines).`,
  wrong: catalogue('    fill 0.5 L, per "S-1"\n#        ^^^^^ L305'),
  right: catalogue('    mass 540 ±15 g, per "S-1"'),
});
