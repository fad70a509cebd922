// A value far outside what its use allows.
import { defineDiagnostic } from './define.js';

export const implausibleValue = defineDiagnostic<{
  readonly written: string;
  readonly use: string;
  readonly low: string;
  readonly high: string;
  /** The same figure in other units, where that is usual. */
  readonly ordinary: readonly string[];
}>({
  code: 'Q117',
  name: 'implausible',
  severity: 'warning',
  message: ({ written, use }) => `${written} is hardly ${use}`,
  advice: ({ low, high, ordinary }) =>
    `usual are ${low} to ${high}${ordinary.length > 0 ? `; ${ordinary.join(' or ')} would be ordinary` : ''}`,
  why: `The figure lies far outside what is seen on road vehicles and light machinery. A decimal point or a unit may have slipped; read the sheet again. If it is right, accept it with the reason.`,
  wrong: `catalogue: Wheels

sources
  HL-1: Wheel sheet

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 13 N·m, per "HL-1"
#          ^^^^^^ Q117
`,
  right: `catalogue: Wheels

sources
  HL-1: Wheel sheet

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 130 N·m, per "HL-1"
`,
});
