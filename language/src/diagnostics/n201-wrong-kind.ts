// A verb on a kind of thing that it does not act on.
import { defineDiagnostic } from './define.js';

export const wrongKind = defineDiagnostic<{
  readonly name: string;
  readonly kind: string;
  readonly verb: string;
  readonly takes: string;
  readonly verbs: readonly string[];
  /** What to declare where the thing can never be what is meant. */
  readonly instead?: string | undefined;
}>({
  code: 'N201',
  name: 'wrong-kind',
  severity: 'error',
  message: ({ name, kind, verb, takes }) => `\`${name}\` is ${kind}; \`${verb}\` takes ${takes}`,
  advice: ({ verbs, kind, instead }) =>
    instead ?? (verbs.length === 0 ? undefined : `verbs for ${kind}: ${verbs.join(', ')}`),
  why: `A verb does something to certain kinds of thing. On any other kind it would change nothing, and the checker would lose the thread of the job there.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    place bore
#         ^^^^ N201
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
`,
});
