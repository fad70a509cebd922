// A comma inside a number.
import { defineDiagnostic } from './define.js';

export const commaInNumber = defineDiagnostic<{
  readonly written: string;
  readonly readings: readonly string[];
}>({
  code: 'Q106',
  name: 'comma-in-number',
  severity: 'error',
  message: ({ written, readings }) =>
    `the comma in ${written} can be misread; write ${readings.join(' or ')}`,
  why: `A comma parts decimals in one country and thousands in the next. A file that is read in both uses a point for decimals and a space for thousands.`,
  wrong: `catalogue: Oils

sources
  HL-1: Oil sheet

places
  dipstick: Dipstick

fluids
  engine-oil: Engine oil
    SAE 5W-30, ACEA C3
    fill 6,7 L, until level at dipstick, per "HL-1"
#        ^^^ Q106
`,
  right: `catalogue: Oils

sources
  HL-1: Oil sheet

places
  dipstick: Dipstick

fluids
  engine-oil: Engine oil
    SAE 5W-30, ACEA C3
    fill 6.7 L, until level at dipstick, per "HL-1"
`,
});
