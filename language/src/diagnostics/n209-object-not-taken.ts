// A thing behind a verb that takes none.
import { defineDiagnostic } from './define.js';

export const objectNotTaken = defineDiagnostic<{ readonly verb: string; readonly name: string }>({
  code: 'N209',
  name: 'object-not-taken',
  severity: 'error',
  message: ({ verb, name }) => `\`${verb}\` acts on nothing; \`${name}\` is too much`,
  why: `The line says more than the verb can mean, so a part of it would be lost.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
    wait bore, 10 min
#        ^^^^ N209
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
