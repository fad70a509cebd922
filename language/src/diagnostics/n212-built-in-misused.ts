// The vehicle, engine or suspension behind a verb that is meant for another of them.
import { defineDiagnostic } from './define.js';

export const builtInMisused = defineDiagnostic<{
  readonly verb: string;
  readonly name: string;
  readonly takes: string;
}>({
  code: 'N212',
  name: 'built-in-misused',
  severity: 'error',
  message: ({ verb, name, takes }) => `\`${verb}\` takes ${takes}, not \`${name}\``,
  why: `The vehicle, its engine and its suspension are there in every job without being declared. Each verb knows which of them it moves.`,
  wrong: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
    clear engine
#         ^^^^^^ N212
`,
  right: `procedure A-1: Bore, look at

places
  bore: Bore

inspection
  step: Look at the bore
    clean bore
    clear codes
`,
});
