// A figure in the text that is not a reference.
import { defineDiagnostic } from './define.js';

export const numberInText = defineDiagnostic<{
  readonly written: string;
  readonly reference: string | undefined;
}>({
  code: 'Q119',
  name: 'number-in-text',
  severity: 'hint',
  message: ({ written, reference }) =>
    reference === undefined
      ? `${written} stands in the text, where nothing checks it`
      : `${written} stands in the text a second time; write {${reference}}`,
  advice: ({ reference }) =>
    reference === undefined ? 'declare the figure and refer to it in braces' : undefined,
  why: `A figure typed into the text is a second copy: it is not converted, not checked, and stays behind when the entry changes. A reference in braces prints the figure of the entry.`,
  wrong: `procedure A-1: Bracket bolt, tighten

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolt
    1 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

installation
  step: Tighten the bracket
    torque bracket-bolt: Stop at 22 N·m.
#                                ^^^^^^ Q119
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
