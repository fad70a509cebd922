// S206: faces not clean.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const facesNotClean = defineDiagnostic<StateWords>({
  code: 'S206',
  name: 'faces-not-clean',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not clean since the part came off`,
  why: 'Sealant does not hold on oil and old sealant.',
  wrong: ``,
  right: ``,
});
