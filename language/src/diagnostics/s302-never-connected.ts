// S302: never connected.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const neverConnected = defineDiagnostic<StateWords>({
  code: 'S302',
  name: 'never-connected',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} disconnected here and never connected again`,
  why: 'A lead or hose left off is a come-back, a warning lamp or a leak.',
  wrong: ``,
  right: ``,
});
