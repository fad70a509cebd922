// R105: released with open points.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

/** Even a house that asks no questions about values not known yet may not release one. */
const OFF = '--- file: baywright.json\n{ "severity": { "Q120": "off" } }\n';

export const releasedWithOpenPoints = defineDiagnostic<{ readonly questions: number }>({
  code: 'R105',
  name: 'released-with-open-points',
  severity: 'error',
  message: ({ questions }) => `released with ${questions} question${questions === 1 ? '' : 's'} open`,
  advice: () => 'answer them, or set the status back to `draft`',
  why: `A released guide is followed without asking. A blank box where a torque belongs goes out with the initials of those who released it.`,
  wrong:
    OFF +
    libraryFile(
      'a.bay',
      'A-1',
      'labour ?',
      'status released by KM, TR on 2026-10-05',
      '#      ^^^^^^^^ R105',
    ),
  right: OFF + libraryFile('a.bay', 'A-1', 'labour 10 min', 'status released by KM, TR on 2026-10-05'),
});
