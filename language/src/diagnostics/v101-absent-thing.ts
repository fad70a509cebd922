// V101: absent thing.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const absentThing = defineDiagnostic<StateWords>({
  code: 'V101',
  name: 'absent-thing',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not there on every vehicle this line is for`,
  why: 'On a vehicle that does not have it the line makes no sense; the technician looks for a part that was never fitted.',
  wrong: ``,
  right: ``,
});
