// A verb that sets a value, without one.
import { defineDiagnostic } from './define.js';

export const valueMissing = defineDiagnostic<{ readonly name: string; readonly known: readonly string[] }>({
  code: 'N207',
  name: 'value-missing',
  severity: 'error',
  message: ({ name }) => `the value of \`${name}\` is missing`,
  advice: ({ known }) => (known.length === 0 ? undefined : `it has ${known.join(', ')}`),
  why: `Set to what? The line must say the value, for the technician and for the check that it is set back at the end.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

conditions
  selector: Gear selector
    park, neutral

inspection
  step: Look at the bore
    clean bore
    set selector
#       ^^^^^^^^ N207
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

conditions
  selector: Gear selector
    park, neutral

inspection
  step: Look at the bore
    clean bore
    set selector park
`,
});
