// S205: sealant skinned.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const sealantSkinned = defineDiagnostic<StateWords>({
  code: 'S205',
  name: 'sealant-skinned',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} on too long when the joint closes`,
  why: 'Sealant that has skinned does not bond. The joint closes within the time its maker gives.',
  wrong: ``,
  right: ``,
});
