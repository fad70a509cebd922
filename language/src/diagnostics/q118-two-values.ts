// A statement with another figure than its thing.
import { defineDiagnostic } from './define.js';

export const twoPlaces = defineDiagnostic<{
  readonly name: string;
  readonly word: string;
  readonly here: string;
  readonly declared: string;
  readonly sameNumber: boolean;
}>({
  code: 'Q118',
  name: 'two-values',
  severity: 'error',
  message: ({ name, word, here, declared, sameNumber }) =>
    `${here} here, but the ${word} of \`${name}\` is ${declared}${sameNumber ? ': one number with two units' : ''}`,
  advice: () => 'leave the figure out here, or correct the entry',
  why: `When one figure stands in two places and only one is corrected, the technician finds both. The entry is the place for it; the line in the step needs no figure.`,
  wrong: `procedure A-1: Bracket bolt, tighten

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolt
    1 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

installation
  step: Tighten the bracket
    torque bracket-bolt, 22 in·lbf
#                        ^^^^^^^^^ Q118
`,
  right: `procedure A-1: Bracket bolt, tighten

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolt
    1 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

installation
  step: Tighten the bracket
    torque bracket-bolt
`,
});
