// A clause that its verb does not take.
import { defineDiagnostic } from './define.js';

export const clauseNotForVerb = defineDiagnostic<{
  readonly verb: string;
  readonly clause: string;
  readonly takes: readonly string[];
  /** Where the figure belongs, when it is a limit's. */
  readonly limit?: { readonly name: string; readonly values: string } | undefined;
  /** The guard that says it. */
  readonly guard?: string;
}>({
  code: 'N203',
  name: 'clause-not-for-verb',
  severity: 'error',
  message: ({ verb, clause }) => `\`${verb}\` takes no ${clause}`,
  advice: ({ verb, takes, limit, guard }) =>
    guard !== undefined
      ? `for one side only, write \`${guard}\``
      : limit !== undefined
        ? limitHint(limit.name, limit.values)
        : takes.length === 0
          ? `\`${verb}\` stands alone`
          : `\`${verb}\` takes ${takes.join(', ')}`,
  why: `A clause that the verb does not take says nothing: it prints nowhere and no check reads it.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore, 3 mm
#               ^^^^ N203
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore: Down to 3 mm below the edge.
`,
});

/** Where the values that a line measures against are written. */
export const limitHint = (name: string, values: string): string =>
  `the values stand at the limit, below \`${name}: …\` in \`limits\`: \`${values}\``;
