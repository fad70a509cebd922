// R110: day impossible.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

export const dayImpossible = defineDiagnostic<{ readonly day: string }>({
  code: 'R110',
  name: 'day-impossible',
  severity: 'error',
  message: (d) => `there is no day ${d.day}`,
  advice: () => 'year, month and day: `2026-10-05`',
  why: `A day that does not exist cannot be compared with any other, so nobody knows whether the paper in hand is the newest.`,
  wrong: libraryFile(
    'a.bay',
    'A-1',
    'revision 1 on 2026-02-30: First issue.',
    '#             ^^^^^^^^^^ R110',
  ),
  right: libraryFile('a.bay', 'A-1', 'revision 1 on 2026-02-28: First issue.'),
});
