// W107: market side.
import { defineDiagnostic } from './define.js';
import { textJob } from './text-example.js';

export const marketSide = defineDiagnostic<{ readonly words: string }>({
  code: 'W107',
  name: 'market-side',
  severity: 'hint',
  message: (d) => `“${d.words}” is another side in another country`,
  advice: () => 'write left or right, as seen in the direction of travel',
  why: `In half the world the driver sits on the right. Left and right, seen in the direction of travel, are the same everywhere.`,
  wrong: textJob(
    "clean mirror-glass: Begin on the driver's side.",
    '#                                    ^^^^^^^^^^^^^ W107',
  ),
  right: textJob('clean mirror-glass: Begin on the left.'),
});
