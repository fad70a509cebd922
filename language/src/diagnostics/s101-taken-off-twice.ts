// S101: taken off twice.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const takenOffTwice = defineDiagnostic<StateWords>({
  code: 'S101',
  name: 'taken-off-twice',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} already ${d.off}`,
  why: 'A line that takes off what is already off is a copy left over, or the line that puts it back is missing before it. The technician stops and looks for a part that is not there.',
  wrong: ``,
  right: ``,
});
