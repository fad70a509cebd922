// A branch or a block for some vehicles with nothing in it.
import { defineDiagnostic } from './define.js';
import { readingJob } from './reading-example.js';

export const blockEmpty = defineDiagnostic<{ readonly head: string }>({
  code: 'G117',
  name: 'block-empty',
  severity: 'hint',
  message: ({ head }) => `nothing stands below \`${head}\``,
  advice: () => 'write what is done then, two spaces deeper, or take the line out',
  why: `A technician who reads “if the limit is passed” waits for what to do. Often the line that belongs below stands too far to the left, and is then done in every case.`,
  wrong: readingJob('measure gap', '  if above limit', '#     ^^^^^^^^^^^^^^ G117'),
  right: readingJob('measure gap', '  if above limit', '    note: Order a new mirror.'),
});
