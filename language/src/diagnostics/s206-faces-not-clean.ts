// S206: faces not clean.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const facesNotClean = defineDiagnostic<StateWords>({
  code: 'S206',
  name: 'faces-not-clean',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} dirty: not cleaned since the part came off`,
  why: 'Sealant does not hold on oil and old sealant. A face is dirty again each time its part comes off.',
  wrong: `procedure A-8: Axle cover, reseal

parts
  cover: Axle cover
    held by cover-bolt
    sealed with axle-sealant on cover-face

fasteners
  cover-bolt: Cover bolts
    8 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "S-2"

supplies
  axle-sealant: Axle sealant
    sealant
    number "AS-1"
    amount 30 mL
    fit within 10 min
    run after 24 h
    per "S-2"

places
  cover-face: Sealing face of the cover

sources
  S-2: Axle sheet, issue 2

removal
  step: Take the cover off
    remove cover-bolt, cover

installation
  step: Seal the cover
    apply axle-sealant to cover-face, bead 4 mm
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S206
    install cover, cover-bolt
    torque cover-bolt
    wait 24 h
    road-test vehicle, 2 km
`,
  right: `procedure A-8: Axle cover, reseal

parts
  cover: Axle cover
    held by cover-bolt
    sealed with axle-sealant on cover-face

fasteners
  cover-bolt: Cover bolts
    8 of M8x1.25, class 8.8, hex 13 mm
    torque 22 N·m, per "S-2"

supplies
  axle-sealant: Axle sealant
    sealant
    number "AS-1"
    amount 30 mL
    fit within 10 min
    run after 24 h
    per "S-2"

places
  cover-face: Sealing face of the cover

sources
  S-2: Axle sheet, issue 2

removal
  step: Take the cover off
    remove cover-bolt, cover

installation
  step: Seal the cover
    clean cover-face
    apply axle-sealant to cover-face, bead 4 mm
    install cover, cover-bolt
    torque cover-bolt
    wait 24 h
    road-test vehicle, 2 km
`,
});
