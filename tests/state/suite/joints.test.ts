// Sealed joints: old, clean, wet, made; the clocks of their sealants.
import { describe } from 'vitest';
import { example } from './job.js';

const SEALED = `
parts
  cover: Cover
    held by bolt
    sealed with paste on face
fluids
  oil: Oil
    drain at cover
fasteners
  bolt: Bolts
    8 of M8x1.25
    torque 22 N·m, per ?
supplies
  paste: Sealant
    sealant
    fit within 10 min
    torque after 1 h
    fill after 2 h
    run after 24 h
places
  face: Face
`;
const OPEN = `
    loosen bolt
    drain oil
    remove bolt, cover`;
const MADE = `${OPEN}
    clean face
    apply paste to face
    install cover, bolt`;

describe('a sealed joint', () => {
  example(
    'cleaned, wetted, closed, cured',
    SEALED,
    `${MADE}
    wait 1 h
    torque bolt
    wait 1 h
    fill oil
    wait 22 h
    road-test vehicle`,
  );
  example(
    'without sealant',
    SEALED,
    `${OPEN}
    clean face
    install cover, bolt
#   ^^^^^^^^^^^^^^^^^^^ S204
    wait 1 h
    torque bolt
    wait 1 h
    fill oil`,
  );
  example(
    'on a face that is not declared yet, which has a finding of its own',
    SEALED.replace('places\n  face: Face\n', ''),
    `${MADE}
    wait 1 h
    torque bolt
    wait 1 h
    fill oil`,
  );
  example(
    'on a face cleaned before the part came off',
    SEALED,
    `
    clean face${OPEN}
    apply paste to face
#   ^^^^^^^^^^^^^^^^^^^ S206
    install cover, bolt
    wait 1 h
    torque bolt
    wait 1 h
    fill oil`,
  );
  example(
    'closed too late',
    SEALED,
    `${OPEN}
    clean face
    apply paste to face
    wait 15 min
    install cover, bolt
#   ^^^^^^^^^^^^^^^^^^^ S205
    wait 1 h
    torque bolt
    wait 1 h
    fill oil`,
  );
  example(
    'torqued before it has set',
    SEALED,
    `${MADE}
    wait 20 min
    torque bolt
#   ^^^^^^^^^^^ S207 40 min more
    wait 2 h
    fill oil`,
  );
  example(
    'filled before it has cured',
    SEALED,
    `${MADE}
    wait 1 h
    torque bolt
    fill oil
#   ^^^^^^^^ S207 1 h more`,
  );
  example(
    'run before it has cured',
    SEALED,
    `${MADE}
    wait 1 h
    torque bolt
    wait 1 h
    fill oil
    road-test vehicle
#   ^^^^^^^^^^^^^^^^^ S207 22 h more`,
  );
  example(
    'work in between is no curing time',
    SEALED,
    `${MADE}
    clean face
    clean face
    clean face
    clean face
    wait 58 min
    torque bolt
#   ^^^^^^^^^^^ S207 2 min more
    wait 2 h
    fill oil`,
  );
});
