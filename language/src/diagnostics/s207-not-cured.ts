// S207: not cured.
import { defineDiagnostic } from './define.js';
import { SEALED_COVER_RIGHT, sealedCoverJob } from './joint-example.js';
import type { StateWords } from './state-words.js';

export const notCured = defineDiagnostic<StateWords>({
  code: 'S207',
  name: 'not-cured',
  severity: 'error',
  message: (d) => `${d.names} must cure ${d.minutes} more before this`,
  why: 'A joint that is torqued, filled or run before its sealant has set moves and leaks. Only written waits count as curing time: nobody knows how long the other lines take in the shop.',
  wrong: sealedCoverJob(
    'clean cover-face',
    'apply axle-sealant to cover-face, bead 4 mm',
    'install cover, cover-bolt',
    'torque cover-bolt',
    'wait 2 h',
    'road-test vehicle, 2 km',
    '#   ^^^^^^^^^^^^^^^^^^^^^^^ S207',
  ),
  right: SEALED_COVER_RIGHT,
});
