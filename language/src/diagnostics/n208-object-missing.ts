// A verb without the thing that it acts on.
import { defineDiagnostic } from './define.js';

export const objectMissing = defineDiagnostic<{ readonly verb: string; readonly takes: string }>({
  code: 'N208',
  name: 'object-missing',
  severity: 'error',
  message: ({ verb, takes }) => `\`${verb}\` says not what; it takes ${takes}`,
  why: `The verb acts on a thing, and the line names none. The technician can only guess.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
    clean
#   ^^^^^ N208
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
    clean bore
`,
});
