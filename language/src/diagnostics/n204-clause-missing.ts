// A clause that its verb cannot do without.
import { defineDiagnostic } from './define.js';

export const clauseMissing = defineDiagnostic<{ readonly verb: string; readonly clause: string }>({
  code: 'N204',
  name: 'clause-missing',
  severity: 'error',
  message: ({ verb, clause }) => `\`${verb}\` says no ${clause}`,
  why: `Without it the line cannot be carried out. What is not known yet is written \`?\`.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
    wait
#   ^^^^ N204
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
    wait 10 min
`,
});
