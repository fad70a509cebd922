// R901: an `accept` that silences nothing.
import { defineDiagnostic } from './define.js';

export const acceptUnused = defineDiagnostic<{ readonly code: string }>({
  code: 'R901',
  name: 'accept-unused',
  severity: 'warning',
  message: (d) => `\`accept ${d.code}\` silences nothing here`,
  advice: () => 'take it out, or move it to the line above the finding',
  tag: 'unused',
  why: 'An `accept` that outlives its finding hides the next one of that kind.',
  wrong: ``,
  right: ``,
});
