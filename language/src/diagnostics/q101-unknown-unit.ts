// A unit that is not in the table.
import { defineDiagnostic } from './define.js';

export const unknownUnit = defineDiagnostic<{
  readonly spelling: string;
  readonly near: string | undefined;
  /** How a set of fasteners is written, where that was meant. */
  readonly set?: string | undefined;
  /** The bound in front of its figure, where it stands behind it. */
  readonly meant?: string;
  /** The grade of an oil, with its standard. */
  readonly grade?: string;
}>({
  code: 'Q101',
  name: 'unknown-unit',
  severity: 'error',
  message: ({ spelling }) => `\`${spelling}\` is not a unit`,
  advice: ({ near, set, meant, grade }) =>
    grade !== undefined
      ? `a grade stands behind the name of its standard: \`${grade}\``
      : meant !== undefined
        ? `a bound stands before its figure, and the unit behind: \`${meant}\` and its unit`
        : set !== undefined
          ? `a set says how many \`of\` what: \`${set}\``
          : near === undefined
            ? 'units are written as on the sheet: N·m, ft·lbf, L, mm, kPa'
            : `the nearest is ${near}`,
  why: `A number whose unit is not known cannot be compared, converted or printed in the other system. Most often a letter is missing or two have changed places.`,
  wrong: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 Nmn, per "HL-1"
#              ^^^ Q101
`,
  right: `catalogue: Hub parts

sources
  HL-1: Hub sheet

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m, per "HL-1"
`,
});
