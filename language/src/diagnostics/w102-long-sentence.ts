// W102: long sentence.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const longSentence = defineDiagnostic<{ readonly count: number; readonly most: number }>({
  code: 'W102',
  name: 'long-sentence',
  severity: 'hint',
  message: (d) => `a sentence of ${d.count} words; ${d.most} are the most`,
  advice: () => 'make two of it',
  why: `A sentence that is read under a vehicle, between two grips, must be understood at once. ASD-STE100 allows 20 words in an instruction (rule 5.1) and 25 in an explanation; a figure with its unit counts as one word.`,
  wrong: textJob(
    'clean mirror-glass: Wipe the glass from the top to the bottom with a wet cloth that has no sand in it and then dry it well.',
    '#                       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ W102',
  ),
  right: textJob(
    'clean mirror-glass: Wipe the glass from the top to the bottom. Take a wet cloth that has no sand in it.',
  ),
});
