// A reference in the text to a figure that its thing does not have.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const unknownAttribute = defineDiagnostic<{
  readonly name: string;
  readonly attribute: string;
  readonly known: readonly string[];
  readonly near: readonly string[];
}>({
  code: 'N309',
  name: 'unknown-attribute',
  severity: 'error',
  message: ({ name, attribute }) => `\`${name}\` has no \`${attribute}\``,
  advice: ({ known, near }) =>
    didYouMean(near) ?? (known.length === 0 ? undefined : `it has ${known.join(', ')}`),
  why: `The reference would print a gap: its thing has no such figure.`,
  wrong: `procedure A-1: Bracket bolt, tighten

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolt
    1 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

installation
  step: Tighten the bracket
    torque bracket-bolt: Stop at {bracket-bolt torq}.
#                                              ^^^^ N309
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
    torque bracket-bolt: Stop at {bracket-bolt torque}.
`,
});
