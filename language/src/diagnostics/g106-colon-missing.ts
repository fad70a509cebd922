// Text that stands on the code side of a line.
import { defineDiagnostic } from './define.js';

export const colonMissing = defineDiagnostic<{
  readonly head: string;
  /** What the line says in other words, where `head` is another thing. */
  readonly meant?: string;
}>({
  code: 'G106',
  name: 'colon-missing',
  severity: 'error',
  message: ({ head }) => `a colon is missing after \`${head}\``,
  advice: ({ head, meant }) =>
    meant === undefined ? undefined : `\`${head}\` ends the job; did you mean \`${meant}\`?`,
  why: `The colon parts what the checker reads from what the technician reads. Without it the text counts as code.`,
  wrong: `procedure A-1: Mirror, replace

removal
  step Take the mirror off
#      ^^^^^^^^^^^^^^^^^^^ G106
    note: The glass breaks easily.`,
  right: `procedure A-1: Mirror, replace

removal
  step: Take the mirror off
    note: The glass breaks easily.`,
});
