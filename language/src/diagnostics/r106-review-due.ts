// R106: review due.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

export const reviewDue = defineDiagnostic<{ readonly day: string }>({
  code: 'R106',
  name: 'review-due',
  severity: 'warning',
  message: (d) => `the review was due on ${d.day}`,
  advice: () => 'read it against the newest sheets, then set the next `review` day',
  why: `Sheets change and vehicles come back with what a procedure got wrong. A day for the next look keeps an old page from being followed for ever.`,
  wrong: libraryFile(
    'a.bay',
    'A-1',
    'status released by KM, TR on 2020-10-05',
    'review 2021-10-05',
    '#      ^^^^^^^^^^ R106',
  ),
  right: libraryFile('a.bay', 'A-1', 'status released by KM, TR on 2020-10-05', 'review 2199-10-05'),
});
