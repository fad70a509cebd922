// A mixed fraction written with a dash.
import { defineDiagnostic } from './define.js';

export const dashedFraction = defineDiagnostic<{ readonly written: string; readonly reading: string }>({
  code: 'Q107',
  name: 'dashed-fraction',
  severity: 'warning',
  message: ({ written, reading }) => `${written} can be read as a range; write ${reading}`,
  why: `With a dash 1-1/2 looks like from 1 to 1/2. With a space it is one and a half and nothing else.`,
  wrong: `catalogue: Hitch

fasteners
  hitch-pin: Hitch pin
    1 of pin, length 2-1/2 in
#                    ^^^^^ Q107
`,
  right: `catalogue: Hitch

fasteners
  hitch-pin: Hitch pin
    1 of pin, length 2 1/2 in
`,
});
