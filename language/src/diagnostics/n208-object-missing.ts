// A verb without the thing that it acts on.
import { defineDiagnostic } from './define.js';
import { didYouMean } from './did-you-mean.js';

export const objectMissing = defineDiagnostic<{
  readonly verb: string;
  readonly takes: string;
  /** What the line says in other words than the language's. */
  readonly meant?: string | undefined;
}>({
  code: 'N208',
  name: 'object-missing',
  severity: 'error',
  message: ({ verb, takes }) => `\`${verb}\` says not what; it takes ${takes}`,
  advice: ({ meant }) => didYouMean(meant === undefined ? [] : [meant]),
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
