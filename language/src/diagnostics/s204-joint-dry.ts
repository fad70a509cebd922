// S204: joint dry.
import { defineDiagnostic } from './define.js';
import { SEALED_COVER_RIGHT, sealedCoverJob } from './joint-example.js';
import type { StateWords } from './state-words.js';

export const jointDry = defineDiagnostic<StateWords>({
  code: 'S204',
  name: 'joint-dry',
  severity: 'error',
  message: (d) => `no sealant on the joint of ${d.object}`,
  why: 'A sealed part that goes on without sealant leaks. The sealant goes on after cleaning and just before the part, each time the part has been off.',
  wrong: sealedCoverJob(
    'clean cover-face',
    'install cover, cover-bolt',
    '#   ^^^^^^^^^^^^^^^^^^^^^^^^^ S204',
    'torque cover-bolt',
    'wait 24 h',
    'road-test vehicle, 2 km',
  ),
  right: SEALED_COVER_RIGHT,
});
