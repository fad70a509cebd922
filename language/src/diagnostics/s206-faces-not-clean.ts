// S206: faces not clean.
import { defineDiagnostic } from './define.js';
import { SEALED_COVER_RIGHT, sealedCoverJob } from './joint-example.js';
import type { StateWords } from './state-words.js';

export const facesNotClean = defineDiagnostic<StateWords>({
  code: 'S206',
  name: 'faces-not-clean',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} dirty: not cleaned since the part came off`,
  why: 'Sealant does not hold on oil and old sealant. A face is dirty again each time its part comes off.',
  wrong: sealedCoverJob(
    'apply axle-sealant to cover-face, bead 4 mm',
    '#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S206',
    'install cover, cover-bolt',
    'torque cover-bolt',
    'wait 24 h',
    'road-test vehicle, 2 km',
  ),
  right: SEALED_COVER_RIGHT,
});
