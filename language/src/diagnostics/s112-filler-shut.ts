// S112: filler shut.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const fillerShut = defineDiagnostic<StateWords>({
  code: 'S112',
  name: 'filler-shut',
  severity: 'error',
  message: (d) => `${d.object} cannot be reached to fill or check: ${d.names} ${d.are} still on`,
  why: 'The filler must be open before fluid goes in or its level is read.',
  wrong: ``,
  right: ``,
});
