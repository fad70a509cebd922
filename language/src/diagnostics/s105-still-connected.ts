// S105: still connected.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const stillConnected = defineDiagnostic<StateWords>({
  code: 'S105',
  name: 'still-connected',
  severity: 'error',
  message: (d) => `${d.object} comes off while ${d.names} ${d.are} still connected`,
  why: 'A part that comes off with its hose or lead connected hangs from it. Disconnect it first, or hang the part in the next line.',
  wrong: ``,
  right: ``,
});
