// W108: mixed terms.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const mixedTerms = defineDiagnostic<{ readonly words: string; readonly first: string }>({
  code: 'W108',
  name: 'mixed-terms',
  severity: 'hint',
  message: (d) => `“${d.words}” here, “${d.first}” above`,
  advice: () => 'one word for one thing: keep to the first',
  why: `A reader who meets a new word looks for a new meaning. ASD-STE100 rule 1.1 and 1.5: one word, one meaning.`,
  wrong: textJob(
    'clean mirror-glass: Make sure that no sand is on it.',
    'note: Ensure that the cloth is wet.',
    '#         ^^^^^^ W108',
  ),
  right: textJob(
    'clean mirror-glass: Make sure that no sand is on it.',
    'note: Make sure that the cloth is wet.',
  ),
});
