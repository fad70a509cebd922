// Work in a file that only declares.
import { defineDiagnostic } from './define.js';

export const workInCatalogue = defineDiagnostic<{ readonly head: string }>({
  code: 'G116',
  name: 'work-in-catalogue',
  severity: 'error',
  message: ({ head }) => `\`${head}\` holds work, and a catalogue has none`,
  advice: () =>
    'move the steps to a procedure, or make this file one: `procedure NUMBER: TITLE` on its first line',
  why: `A catalogue says what there is; what is done stands in procedures. Nobody prints the work of a catalogue, and what it takes apart is not followed.`,
  wrong: `catalogue: Mirrors

places
  mirror-glass: Mirror glass

inspection
# <<<<<<<<<< G116
  step: Clean the mirror
    clean mirror-glass
`,
  right: `procedure A-1: Mirror, clean

places
  mirror-glass: Mirror glass

inspection
  step: Clean the mirror
    clean mirror-glass
`,
});
