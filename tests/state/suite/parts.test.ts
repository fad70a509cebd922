// Parts: held, clamped, covered, riding in others, hung on their lines.
import { describe } from 'vitest';
import { example } from './job.js';

const CALIPER = `
parts
  caliper: Caliper
    held by bolt
  pads: Pads
    in caliper
  disc: Disc
    behind caliper
fasteners
  bolt: Bolts
    2 of M12x1.5
    torque 110 N·m, per ?
connections
  hose: Hose
    on caliper
`;
const TWO = `
parts
  sensor: Sensor
    behind shield, tray
  shield: Shield
  tray: Tray
fasteners
  nut: Axle nut
    1 of M24x1.5
    torque 200 N·m, per ?
    behind shield
`;
const CLAMPED = `
parts
  box: Air box
    clamped by band
fasteners
  band: Band
    1 of clamp
    torque 3 N·m, per ?
`;
const MOVED = `
parts
  axle: Axle
    positions seated, pushed-in, drawn-out
`;

const BEARING = `
parts
  shaft: Shaft
    held by flange-bolt
  bearing: Bearing
    in shaft
    held by bearing-bolt
fasteners
  flange-bolt: Flange bolts
    4 of M12x1.5
    torque 120 N·m, per ?
  bearing-bolt: Bearing bolts
    2 of M14x2
    torque 170 N·m, per ?
`;

describe('renew', () => {
  example(
    'what rides in a part on the bench',
    BEARING,
    `
    remove flange-bolt, bearing-bolt, shaft
    renew bearing
    install shaft, flange-bolt, bearing-bolt
    torque flange-bolt, bearing-bolt`,
  );
});

describe('test', () => {
  example('a function is proved with the covers on', TWO, 'test sensor');
  example(
    'what is measured must be reached',
    TWO,
    `
    measure sensor
#   ^^^^^^^^^^^^^^ S104 \`sensor\``,
  );
});

describe('remove', () => {
  example(
    'what is still held',
    CALIPER,
    `
    remove caliper
#   ^^^^^^^^^^^^^^ S103 \`caliper\` is still held by \`bolt\`
    remove bolt
    disconnect hose
    install caliper
    connect hose
    install bolt
    torque bolt`,
  );
  example(
    'with its hose connected',
    CALIPER,
    `
    remove bolt, caliper
#   ^^^^^^^^^^^^^^^^^^^^ S105
    disconnect hose
    install caliper, bolt
    connect hose
    torque bolt`,
  );
  example(
    'with its hose connected, hung in the next line',
    CALIPER,
    `
    remove bolt, caliper
    hang caliper
    install caliper, bolt
    torque bolt`,
  );
  example(
    'twice',
    TWO,
    `
    remove tray
    remove tray
#   ^^^^^^^^^^^ S101
    install tray`,
  );
  example(
    'what is clamped, once slack',
    CLAMPED,
    `
    loosen band
    remove box
    install box
    torque band`,
  );
  example(
    'what is clamped, still tight',
    CLAMPED,
    `
    remove box
#   ^^^^^^^^^^ S103
    loosen band
    install box
    torque band`,
  );
});

describe('covered', () => {
  example(
    'by two: both must be off',
    TWO,
    `
    remove shield
    remove sensor
#   ^^^^^^^^^^^^^ S104 \`tray\` is still on
    remove tray
    install sensor
    install shield, tray`,
  );
  example(
    'a fastener by what it names itself',
    TWO,
    `
    loosen nut
#   ^^^^^^^^^^ S104 \`nut\` cannot be reached
    remove shield
    torque nut
    install shield`,
  );
  example(
    'a hung part covers nothing',
    CALIPER,
    `
    remove bolt
    hang caliper
    remove disc
    install disc
    install caliper, bolt
    torque bolt`,
  );
  example(
    'a cover that goes on before what sits behind it',
    CALIPER,
    `
    remove bolt
    hang caliper
    remove disc
    install caliper, bolt
#   ^^^^^^^^^^^^^^^^^^^^^ S201 \`disc\` is put on only later
    install disc
    torque bolt`,
  );
});

describe('hang', () => {
  example(
    'without a remove before it',
    CALIPER,
    `
    remove bolt
    hang caliper
    install caliper, bolt
    torque bolt`,
  );
  example(
    'twice',
    CALIPER,
    `
    remove bolt
    hang caliper
    hang caliper
#   ^^^^^^^^^^^^ S101
    install caliper, bolt
    torque bolt`,
  );
  example(
    'and forgotten: hung is not in',
    CALIPER,
    `
    remove bolt
#   ^^^^^^^^^^^ S301 \`bolt\` and \`caliper\`
    hang caliper`,
  );
});

describe('what rides along', () => {
  example(
    'needs no line of its own',
    CALIPER,
    `
    remove bolt
    disconnect hose
    remove caliper
    install caliper, bolt
    connect hose
    torque bolt`,
  );
  example(
    'taken out, goes back before its part',
    CALIPER,
    `
    remove bolt
    hang caliper
    remove pads
    install caliper, bolt
#   ^^^^^^^^^^^^^^^^^^^^^ S201 \`pads\`
    install pads
    torque bolt`,
  );
});

describe('move', () => {
  example(
    'and back',
    MOVED,
    `
    move axle to pushed-in
    move axle to seated`,
  );
  example(
    'and left there',
    MOVED,
    `
    move axle to pushed-in
    move axle to drawn-out
#   ^^^^^^^^^^^^^^^^^^^^^^ S310 never moved back to \`seated\``,
  );
  example(
    'ends when the part comes off and goes on again',
    MOVED,
    `
    move axle to pushed-in
    remove axle
    install axle`,
  );
});

describe('never put back', () => {
  example(
    'names part and fasteners of one joint once',
    CALIPER,
    `
    disconnect hose
    remove bolt, caliper
#   ^^^^^^^^^^^^^^^^^^^^ S301 \`bolt\` and \`caliper\`
    clean disc`,
  );
});

describe('a look for leaks', () => {
  const SEAL = `
parts
  guard: Guard
  seal: Seal
    behind guard
`;
  example(
    'after the engine has run is a look from outside',
    SEAL,
    `
    remove guard
    inspect seal
    install guard
    run engine
    inspect seal`,
  );
  example(
    'before that is a look at the thing itself',
    SEAL,
    `
    inspect seal
#   ^^^^^^^^^^^^ S104`,
  );
});
