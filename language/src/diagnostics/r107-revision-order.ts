// R107: revision order.
import { defineDiagnostic } from './define.js';
import { libraryFile } from './register-example.js';

export const revisionOrder = defineDiagnostic<{ readonly problem: string }>({
  code: 'R107',
  name: 'revision-order',
  severity: 'warning',
  message: (d) => d.problem,
  why: `The revision tells a technician whether the paper in hand is the newest. Newest first, each number one used once, and a later number never on an earlier day.`,
  wrong: libraryFile(
    'a.bay',
    'A-1',
    'revision 3 on 2026-07-06: Glass is cleaned first.',
    'revision 3 on 2025-02-11: First issue.',
    '#        ^ R107',
  ),
  right: libraryFile(
    'a.bay',
    'A-1',
    'revision 3 on 2026-07-06: Glass is cleaned first.',
    'revision 2 on 2025-02-11: First issue.',
  ),
});
