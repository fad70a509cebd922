// W103: two instructions.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const twoInstructions = defineDiagnostic<{ readonly words: string }>({
  code: 'W103',
  name: 'two-instructions',
  severity: 'hint',
  message: (d) => `“${d.words}” joins two instructions in one sentence`,
  advice: () => 'give each its own sentence, or its own line',
  why: `The second half of a sentence is the half that is forgotten when someone calls across the shop. ASD-STE100 rule 5.2: one instruction a sentence, unless both are done at once.`,
  wrong: textJob(
    'clean mirror-glass: Wet the glass and then wipe it.',
    '#                                     ^^^^^^^^ W103',
  ),
  right: textJob('clean mirror-glass: Wet the glass. Wipe it.'),
});
