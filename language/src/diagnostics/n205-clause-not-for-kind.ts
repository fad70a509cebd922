// A clause in an entry of a kind that has none such.
import { defineDiagnostic } from './define.js';

export const clauseNotForKind = defineDiagnostic<{
  readonly clause: string;
  readonly name: string;
  readonly kind: string;
  readonly takes: string;
  /** Where it is said instead. */
  readonly instead?: string | undefined;
}>({
  code: 'N205',
  name: 'clause-not-for-kind',
  severity: 'error',
  message: ({ clause, name, kind }) => `\`${name}\` is ${kind}, which has no ${clause}`,
  advice: ({ clause, takes, instead }) =>
    instead ?? (takes === '' ? undefined : `${clause} goes with ${takes}`),
  why: `An entry has the clauses of its kind. In another entry the clause is read by no check and printed nowhere.`,
  wrong: `catalogue: Places

places
  bore: Bore
    mass 3 kg
#   ^^^^ N205
`,
  right: `catalogue: Places

parts
  housing: Housing
    mass 3 kg
`,
});
