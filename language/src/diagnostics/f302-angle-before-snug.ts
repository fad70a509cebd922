// F302: angle before snug.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const angleBeforeSnug = defineDiagnostic<StateWords>({
  code: 'F302',
  name: 'angle-before-snug',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} turned by an angle before being snug`,
  why: 'An angle counts from a snug joint; from a loose one it says nothing about the clamp force.',
  wrong: ``,
  right: ``,
});
