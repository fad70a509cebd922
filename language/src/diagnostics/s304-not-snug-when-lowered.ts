// S304: not snug when lowered.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notSnugWhenLowered = defineDiagnostic<StateWords>({
  code: 'S304',
  name: 'not-snug-when-lowered',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} not snug when the vehicle is lowered`,
  why: 'A vehicle that stands on a wheel with loose nuts drops off it or spoils the studs.',
  wrong: ``,
  right: ``,
});
