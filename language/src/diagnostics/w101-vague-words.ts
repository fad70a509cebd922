// W101: vague words.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const vagueWords = defineDiagnostic<{ readonly words: string; readonly instead: string }>({
  code: 'W101',
  name: 'vague-words',
  severity: 'hint',
  message: (d) => `“${d.words}” leaves it to the reader`,
  advice: (d) => `write ${d.instead}`,
  why: `Ten technicians read ten amounts. What can be measured belongs in a figure that the checker knows; what can be seen, in the sign by which one sees it.`,
  wrong: textJob(
    'clean mirror-glass: Use a little bit of water.',
    '#                           ^^^^^^^^^^^^ W101',
  ),
  right: textJob('clean mirror-glass: Use a wet cloth.'),
});
