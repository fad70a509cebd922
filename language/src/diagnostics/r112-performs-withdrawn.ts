// R112: performs withdrawn.
import { defineDiagnostic } from './define.js';
import { mirrorLook } from './performs-example.js';

export const performsWithdrawn = defineDiagnostic<{ readonly number: string }>({
  code: 'R112',
  name: 'performs-withdrawn',
  severity: 'warning',
  message: (d) => `${d.number}, which this line performs from, is withdrawn`,
  advice: () => 'perform it from the procedure that took its place',
  tag: 'deprecated',
  why: `A procedure is withdrawn because nobody should work by it any more. Its steps still go out in every guide that performs them.`,
  wrong: mirrorLook({ from: 'A-2', mark: 'R112' }, 'withdrawn by KM, TR on 2026-10-05'),
  right: mirrorLook({ from: 'A-3' }),
});
