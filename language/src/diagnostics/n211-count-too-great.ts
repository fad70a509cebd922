// A count that is larger than its set.
import { defineDiagnostic } from './define.js';

export const countTooGreat = defineDiagnostic<{
  readonly written: number;
  readonly name: string;
  readonly count: number;
}>({
  code: 'N211',
  name: 'count-too-great',
  severity: 'error',
  message: ({ written, name, count }) => `${written} of \`${name}\`, but there are ${count}`,
  why: `One of the two numbers is wrong. If the set was counted wrongly, a fastener stays in, or the pull list is short.`,
  wrong: `catalogue: Bracket

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

parts
  bracket: Bracket
    held by 6 of bracket-bolt
#           ^ N211
`,
  right: `catalogue: Bracket

sources
  HL-1: Bracket sheet

fasteners
  bracket-bolt: Bracket bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "HL-1"

parts
  bracket: Bracket
    held by 4 of bracket-bolt
`,
});
