// A brace in text that makes no reference.
import { defineDiagnostic } from './define.js';

export const referenceOpen = defineDiagnostic<{ readonly closed: boolean }>({
  code: 'G209',
  name: 'reference-open',
  severity: 'error',
  message: ({ closed }) =>
    closed ? 'these braces hold no reference' : 'this brace opens a reference that is never closed',
  advice: () => 'write `{name}` or `{name torque}`; for the sign itself put a backslash before it',
  why: `Braces in text stand for a figure declared elsewhere, so that the figure is written once: \`{hub-bolt torque}\`. A brace that is meant as itself is written with a backslash before it.`,
  wrong: `procedure A-1: Mirror, replace

removal
  step: Take the mirror off
    note: Mind the {clip.
#                  ^ G209`,
  right: `procedure A-1: Mirror, replace

removal
  step: Take the mirror off
    note: Mind the \\{clip.`,
});
