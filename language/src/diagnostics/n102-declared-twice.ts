// Two entries of one file with the same name.
import { defineDiagnostic } from './define.js';

export const declaredTwice = defineDiagnostic<{ readonly name: string }>({
  code: 'N102',
  name: 'declared-twice',
  severity: 'error',
  message: ({ name }) => `\`${name}\` is declared a second time`,
  advice: () => 'give one of the two another name, or take it out',
  why: `Two entries with one name would be two things that nobody can tell apart. One of them is a copy left over, or needs a name of its own.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore of the knuckle
  bore: Bore of the housing
# ^^^^ N102

inspection
  step: Look at the bore
    clean bore
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore of the knuckle
  housing-bore: Bore of the housing

inspection
  step: Look at the bore
    clean bore, housing-bore
`,
});
