// A branch or a block for some vehicles with nothing in it.
import { defineDiagnostic } from './define.js';

export const blockEmpty = defineDiagnostic<{ readonly head: string }>({
  code: 'G117',
  name: 'block-empty',
  severity: 'hint',
  message: ({ head }) => `nothing stands below \`${head}\``,
  advice: () => 'write what is done then, two spaces deeper, or take the line out',
  why: `A technician who reads “if the limit is passed” waits for what to do. Often the line that belongs below stands too far to the left, and is then done in every case.`,
  wrong: `procedure A-1: Mirror, look at

limits
  gap: Gap
    at most 1 mm, per "S-1"

sources
  S-1: Mirror sheet

inspection
  step: Measure the gap
    measure gap
      if above limit
#     ^^^^^^^^^^^^^^ G117
`,
  right: `procedure A-1: Mirror, look at

limits
  gap: Gap
    at most 1 mm, per "S-1"

sources
  S-1: Mirror sheet

inspection
  step: Measure the gap
    measure gap
      if above limit
        note: Order a new mirror.
`,
});
