// S205: sealant skinned.
import { defineDiagnostic } from './define.js';
import { SEALED_COVER_RIGHT, sealedCoverJob } from './joint-example.js';
import type { StateWords } from './state-words.js';

export const sealantSkinned = defineDiagnostic<StateWords>({
  code: 'S205',
  name: 'sealant-skinned',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} on too long before the joint closes`,
  why: 'Sealant that has skinned does not bond. The joint closes within the time its maker gives (`fit within`), the usual minutes of the work in between counted.',
  wrong: sealedCoverJob(
    'clean cover-face',
    'apply axle-sealant to cover-face, bead 4 mm',
    'wait 15 min',
    'install cover, cover-bolt',
    '#   ^^^^^^^^^^^^^^^^^^^^^^^^^ S205',
    'torque cover-bolt',
    'wait 24 h',
    'road-test vehicle, 2 km',
  ),
  right: SEALED_COVER_RIGHT,
});
