// S204: joint dry.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const jointDry = defineDiagnostic<StateWords>({
  code: 'S204',
  name: 'joint-dry',
  severity: 'error',
  message: (d) => `${d.object} goes on a dry joint: no sealant on it yet`,
  why: 'A sealed part that goes on without sealant leaks. The sealant goes on after cleaning and just before the part.',
  wrong: ``,
  right: ``,
});
