// L101: a grade that its standard does not have.
import { defineDiagnostic } from './define.js';
import { oilCatalogue } from './oil-example.js';

export const gradeUnknown = defineDiagnostic<{
  readonly problem: string;
  readonly source: string;
  readonly fix: string | undefined;
}>({
  code: 'L101',
  name: 'grade-unknown',
  severity: 'error',
  message: (d) => d.problem,
  advice: (d) => (d.fix === undefined ? `by ${d.source}` : `did you mean \`${d.fix}\`?`),
  why: `A grade that does not exist cannot be bought, and the can that is taken instead is a guess.

Grades are read by SAE J306 and J300 (oils), API 1560 and 1509, ACEA, 49 CFR 571.116 (\`DOT 4\`), ISO 3448, NLGI, ASTM D3306 and ISO 817 (refrigerants).`,
  wrong: oilCatalogue('SAE 80-90, API GL-5', '#       ^^^^^ L101', 'fill 1.9 L, per "S-1"'),
  right: oilCatalogue('SAE 80W-90, API GL-5', 'fill 1.9 L, per "S-1"'),
});
