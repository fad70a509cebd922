// An operation that performs itself.
import { defineDiagnostic } from './define.js';

export const performCycle = defineDiagnostic<{ readonly way: readonly string[] }>({
  code: 'N305',
  name: 'perform-cycle',
  severity: 'error',
  message: ({ way }) => `this operation comes back to itself: ${way.join(', ')}`,
  why: `An operation that performs itself never ends. One of the two lines belongs elsewhere.`,
  wrong: `procedure WH-01: Mirror, look at

parts
  mirror: Door mirror

inspection
  operation look: Look at the mirror
    step: Look at it
      clean mirror
      perform look
#     ^^^^^^^^^^^^ N305
`,
  right: `procedure WH-01: Mirror, look at

parts
  mirror: Door mirror

inspection
  operation look: Look at the mirror
    step: Look at it
      clean mirror
  perform look
`,
});
