// A value or position that its thing does not list.
import { defineDiagnostic } from './define.js';

export const valueNotDeclared = defineDiagnostic<{
  readonly name: string;
  readonly value: string;
  readonly known: readonly string[];
}>({
  code: 'N206',
  name: 'value-not-declared',
  severity: 'error',
  message: ({ name, value }) => `\`${name}\` has no value \`${value}\``,
  advice: ({ known }) => (known.length === 0 ? undefined : `it has ${known.join(', ')}`),
  why: `A condition is in one of the values that its entry lists. One that is not listed cannot be checked, and at the end nobody knows what it is to be set back to.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

conditions
  selector: Gear selector
    park, neutral

inspection
  step: Look at the bore
    clean bore
    set selector parked
#                ^^^^^^ N206
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
