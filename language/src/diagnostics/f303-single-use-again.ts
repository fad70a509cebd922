// F303: single use again.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const singleUseAgain = defineDiagnostic<StateWords>({
  code: 'F303',
  name: 'single-use-again',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} single-use and tightened a second time`,
  why: 'A single-use fastener has stretched or lost its locking. It must be new each time it is tightened.',
  wrong: ``,
  right: ``,
});
