// One cause, one finding: what follows from a fault is not told again.
import { describe } from 'vitest';
import { example } from './job.js';

const HUB = `
parts
  hub: Hub
    held by bolt, nut
    behind disc
  disc: Disc
    behind caliper
  caliper: Caliper
    held by pin
    behind wheel
  tag: Tag
    held by bolt
  wheel: Wheel
    held by wheel-nut
    marked wheel
fasteners
  bolt: Hub bolts
    4 of M12x1.5
    torque 115 N·m, per ?
  nut: Axle nut
    1 of M24x1.5
    torque 245 N·m, per ?
  pin: Pins
    2 of M8x1.25
    torque 30 N·m, per ?
    behind wheel
  wheel-nut: Nuts
    5 of M14x1.5
    torque 160 N·m, per ?
connections
  lead: Lead
    on hub
`;

describe('a cover in the way', () => {
  example(
    'was never off, and nothing is owed for putting it back',
    HUB,
    `
    raise vehicle
    loosen pin
#   ^^^^^^^^^^ S104 \`wheel\`
    torque pin
    lower vehicle`,
  );
});

describe('a failed need', () => {
  example(
    'that later lines would meet again: told once',
    HUB,
    `
    remove wheel-nut, wheel
    remove disc
#   ^^^^^^^^^^^ S104 \`caliper\`
    disconnect lead
    remove nut, bolt, tag, hub
    install hub, tag, bolt, nut
    torque bolt, nut
    connect lead
    install disc
    install caliper, pin
    torque pin
    install wheel, wheel-nut
    torque wheel-nut`,
  );
  example(
    'whose line comes later: that line is taken silently',
    HUB,
    `
    remove wheel-nut, wheel
    remove disc
#   ^^^^^^^^^^^ S104
    remove pin, caliper
    install disc
    install caliper, pin
    torque pin
    install wheel, wheel-nut
    torque wheel-nut`,
  );
  example(
    'several needs of one line: the first speaks',
    HUB,
    `
    remove hub
#   ^^^^^^^^^^ S103
    disconnect lead
    install hub, bolt, nut
    torque bolt, nut
    connect lead`,
  );
});

describe('one joint', () => {
  example(
    'bolts, tag and part left off: one finding',
    HUB,
    `
    remove wheel-nut, wheel
    remove pin, caliper, disc
    disconnect lead
    remove nut, bolt, tag, hub
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^ S301
    install disc
    install caliper, pin
    torque pin
    install wheel, wheel-nut
    torque wheel-nut`,
  );
});

describe('whole-vehicle lines', () => {
  example(
    'tell what is left off where it was left, and not again at the end',
    HUB,
    `
    raise vehicle
    support vehicle
    remove wheel-nut, wheel
    remove pin, caliper
#   ^^^^^^^^^^^^^^^^^^^ S301
    install wheel, wheel-nut
    torque wheel-nut
    lower vehicle
    road-test vehicle
    road-test vehicle`,
  );
});

describe('a path', () => {
  example(
    'on which something was assumed does not differ because of it',
    `
parts
  drum: Drum
    behind wheel
  wheel: Wheel
    held by wheel-bolt
fasteners
  wheel-bolt: Wheel bolts
    5 of M14x1.5
    torque 160 N·m, per ?`,
    `
    inspect wheel
    if needed: The drum sticks.
      tap drum
#     ^^^^^^^^ S104 \`wheel\`
    remove wheel-bolt, wheel
    remove drum
    install drum
    install wheel, wheel-bolt
    torque wheel-bolt`,
  );
});

describe('a house rule and the state that say the same', () => {
  example(
    'one finding',
    `
connections
  minus: Negative lead
  plus: Positive lead
rules
  minus-first: Negative first.
    never disconnect plus
    while minus connected`,
    `
    disconnect plus
#   ^^^^^^^^^^^^^^^ S403
    connect plus
    connect minus`,
  );
});

describe('combinations', () => {
  example(
    'that fail at different lines for one cause: told where it was left',
    `
applies to van
vehicles
  van: Van
    option axle light, heavy
parts
  tray: Tray`,
    `
    remove tray
#   ^^^^^^^^^^^ S301
    when axle heavy
      road-test vehicle`,
  );
});

describe('a line that cannot be read', () => {
  example(
    'makes the things it names unknown',
    HUB,
    `
    remove wheel-nut, wheel
    instal wheel, wheel-nut
    torque wheel-nut`,
  );
  example(
    'a misspelt name is a finding of its own',
    HUB,
    `
    remove wheel-nut, wheell
    install wheel, wheel-nut
    torque wheel-nut`,
  );
});

describe('a suspension that is not loaded', () => {
  example(
    'where a torque asks for ride height: the jack that is taken away later is no second fault',
    `
fasteners
  link-nut: Link nut
    1 of M10x1.5
    torque 50 N·m, per ?
`,
    `
    raise vehicle
    support vehicle
    loosen link-nut
    torque link-nut, at ride height
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ F301 ride height
    unload suspension
    lower vehicle`,
  );
});

describe('a cap that a rule asks for', () => {
  example(
    'is told once: not again where it is taken off',
    `
connections
  hose: Hose
rules
  caps: Open lines are capped.
    after disconnect any connection
    require cap it
    before next
`,
    `
    disconnect hose
#   ^^^^^^^^^^^^^^^ S403
    wait 10 min
    uncap hose
    connect hose`,
  );
});
