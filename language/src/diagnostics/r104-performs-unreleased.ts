// R104: performs unreleased.
import { defineDiagnostic } from './define.js';
import { mirrorLook } from './performs-example.js';

const RELEASED = 'released by KM, TR on 2026-10-05';

export const performsUnreleased = defineDiagnostic<{
  readonly number: string;
  readonly status: string;
  readonly own: string;
}>({
  code: 'R104',
  name: 'performs-unreleased',
  severity: 'warning',
  message: (d) => `this procedure is ${d.own}, and ${d.number} that it performs from is ${d.status}`,
  advice: (d) => `have ${d.number} released first, or set this one back to draft`,
  why: `The guide prints the performed steps as if they were its own. Steps that nobody has released go out under the initials of those who released this one.`,
  wrong: mirrorLook({ status: RELEASED, from: 'A-2', mark: 'R104' }, 'draft'),
  right: mirrorLook({ status: RELEASED, from: 'A-2' }, RELEASED),
});
