// L307: a line charges another mass than the entry allows.
import { defineDiagnostic } from './define.js';

const job = (...charge: readonly string[]): string => `procedure A-1: Air conditioning, charge

sources
  S-1: Air conditioning sheet, issue 1

circuits
  cold-circuit: Refrigerant circuit
    uses cab-refrigerant

fluids
  cab-refrigerant: Refrigerant
    refrigerant R-1234yf
    mass 540 ±15 g, per "S-1"

preparation
  step: Recover
    caution: Refrigerant freezes skin and eyes. Wear goggles and gloves. Certified technicians only.
    recover cab-refrigerant

installation
  step: Charge
    evacuate cold-circuit, 30 min
${charge.join('\n')}
`;

export const chargeOffPlate = defineDiagnostic<{
  readonly name: string;
  readonly amount: string;
  readonly allowed: string;
}>({
  code: 'L307',
  name: 'charge-off-plate',
  severity: 'error',
  message: (d) => `${d.amount} of \`${d.name}\` is not within the ${d.allowed} of its entry`,
  advice: () => 'leave the figure out here, or correct the one that is wrong',
  why: `Refrigerant is charged by weight, to what the plate under the bonnet allows (common practice; 40 CFR 82 subpart B on the machines). Too little does not cool and starves the compressor of oil; too much can break it.`,
  wrong: job('    charge cab-refrigerant, 600 g', '#                           ^^^^^ L307'),
  right: job('    charge cab-refrigerant, 530 g'),
});
