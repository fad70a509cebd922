// S205: sealant skinned.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const sealantSkinned = defineDiagnostic<StateWords>({
  code: 'S205',
  name: 'sealant-skinned',
  severity: 'error',
  message: (d) => `${d.names} ${d.are} on too long before the joint closes`,
  why: 'Sealant that has skinned does not bond. The joint closes within the time its maker gives (`fit within`), the usual minutes of the work in between counted.',
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
    clean cover-face
    apply axle-sealant to cover-face, bead 4 mm
    wait 15 min
    install cover, cover-bolt
#   ^^^^^^^^^^^^^^^^^^^^^^^^^ S205
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
