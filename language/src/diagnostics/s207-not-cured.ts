// S207: not cured.
import { defineDiagnostic } from './define.js';
import type { StateWords } from './state-words.js';

export const notCured = defineDiagnostic<StateWords>({
  code: 'S207',
  name: 'not-cured',
  severity: 'error',
  message: (d) => `${d.names} must cure ${d.minutes} more before this`,
  why: 'A joint that is torqued, filled or run before its sealant has set moves and leaks. Only written waits count as curing time: nobody knows how long the other lines take in the shop.',
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
    install cover, cover-bolt
    torque cover-bolt
    wait 2 h
    road-test vehicle, 2 km
#   ^^^^^^^^^^^^^^^^^^^^^^^ S207
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
