// Fluids: let out where something is open, put in when all is shut, looked at when it has settled.
import { describe } from 'vitest';
import { example } from './job.js';

const PLUGS = `
fluids
  oil: Oil
    drain at drain-plug
    fill at fill-plug
fasteners
  drain-plug: Drain plug
    1 of M18x1.5
    torque 40 N·m, per ?
  fill-plug: Fill plug
    1 of M18x1.5
    torque 40 N·m, per ?
temporary
  pan: Pan
`;
const SETTLES = PLUGS.replace('    fill at fill-plug', '    fill at fill-plug\n    settle 10 min');
const COVER = `
fluids
  oil: Oil
    drain at cover
parts
  cover: Cover
    held by bolt
fasteners
  bolt: Bolts
    10 of M8x1.25
    torque 22 N·m, per ?
`;
const CLOSES = `
fluids
  coolant: Coolant
parts
  thermostat: Thermostat
    closes coolant
`;

const CHANGE = `
    remove fill-plug, drain-plug
    drain oil
    install drain-plug
    torque drain-plug
    fill oil`;

describe('drain', () => {
  example(
    'fill and close',
    PLUGS,
    `${CHANGE}
    install fill-plug
    torque fill-plug`,
  );
  example(
    'with the plug in',
    PLUGS,
    `
    remove fill-plug
    drain oil
#   ^^^^^^^^^ S111 \`drain-plug\`
    remove drain-plug
    install drain-plug
    torque drain-plug
    fill oil
    install fill-plug
    torque fill-plug`,
  );
  example(
    'at a cover needs slack bolts, not bolts out',
    COVER,
    `
    remove 8 of bolt
    loosen 2 of bolt
    drain oil
    remove bolt, cover
    install cover, bolt
    torque bolt
    fill oil`,
  );
  example(
    'at a cover whose bolts are still tight',
    COVER,
    `
    remove 8 of bolt
    drain oil
#   ^^^^^^^^^ S111 \`bolt\`
    remove bolt, cover
    install cover, bolt
    torque bolt
    fill oil`,
  );
  example(
    'into a pan that is not there',
    PLUGS,
    `
    remove fill-plug, drain-plug
    drain oil into pan
#   ^^^^^^^^^^^^^^^^^^ S108 \`pan\`
    install drain-plug
    torque drain-plug
    fill oil
    install fill-plug
    torque fill-plug`,
  );
});

describe('opening', () => {
  example(
    'a cover with the oil still in',
    COVER,
    `
    remove bolt, cover
#   ^^^^^^^^^^^^^^^^^^ S116
    install cover, bolt
    torque bolt
    fill oil`,
  );
  example(
    'a part that closes a fluid',
    CLOSES,
    `
    remove thermostat
#   ^^^^^^^^^^^^^^^^^ S116 \`coolant\`
    install thermostat
    fill coolant`,
  );
  example(
    'a drain plug lets the oil out',
    PLUGS,
    `
    remove drain-plug
#   ^^^^^^^^^^^^^^^^^ S306
    install drain-plug
    torque drain-plug`,
  );
});

describe('fill', () => {
  example(
    'never',
    PLUGS,
    `
    remove fill-plug, drain-plug
    drain oil
#   ^^^^^^^^^ S306
    install drain-plug, fill-plug
    torque drain-plug, fill-plug`,
  );
  example(
    'before the drain is shut',
    PLUGS,
    `
    remove fill-plug, drain-plug
    drain oil
    fill oil
#   ^^^^^^^^ S203 \`drain-plug\`
    install drain-plug, fill-plug
    torque drain-plug, fill-plug`,
  );
  example(
    'with the filler shut',
    PLUGS,
    `
    remove drain-plug
    drain oil
    install drain-plug
    torque drain-plug
    fill oil
#   ^^^^^^^^ S112 \`fill-plug\``,
  );
});

describe('level', () => {
  example(
    'is looked at once settled',
    SETTLES,
    `${CHANGE}
    wait 10 min
    check-level oil
    install fill-plug
    torque fill-plug`,
  );
  example(
    'is looked at too soon',
    SETTLES,
    `${CHANGE}
    wait 4 min
    check-level oil
#   ^^^^^^^^^^^^^^^ S208 6 min more
    install fill-plug
    torque fill-plug`,
  );
  example(
    'is never looked at',
    SETTLES,
    `${CHANGE}
#   ^^^^^^^^ S307
    install fill-plug
    torque fill-plug`,
  );
  example(
    'settles anew after a drive',
    SETTLES,
    `${CHANGE}
    wait 10 min
    check-level oil
    install fill-plug
    torque fill-plug
    road-test vehicle
    remove fill-plug
    check-level oil
#   ^^^^^^^^^^^^^^^ S208 10 min more
    install fill-plug
    torque fill-plug`,
  );
  example(
    'of a drained system',
    PLUGS,
    `
    remove fill-plug, drain-plug
    drain oil
    install drain-plug
    torque drain-plug
    check-level oil
#   ^^^^^^^^^^^^^^^ S209
    fill oil
    install fill-plug
    torque fill-plug`,
  );
  example(
    'is read at the dipstick with the filler shut',
    SETTLES.replace('    fill at fill-plug', '    fill at fill-plug\n    until level at dipstick').concat(
      'places\n  dipstick: Dipstick\n',
    ),
    `${CHANGE}
    install fill-plug
    torque fill-plug
    wait 10 min
    check-level oil`,
  );
});

describe('a fuel line', () => {
  const FUEL = `
fluids
  diesel: Diesel
circuits
  low-pressure: Low-pressure circuit
    uses diesel
    bleed at bleed-screw
connections
  feed-line: Feed line
    in low-pressure
    marked fuel
fasteners
  bleed-screw: Bleed screw
    1 of M8x1.25
    torque 5 N·m, per ?
`;
  example(
    'that was open wants bleeding, not filling',
    FUEL,
    `
    disconnect feed-line
    connect feed-line
    loosen bleed-screw
    bleed low-pressure
    torque bleed-screw
    run engine`,
  );
  example(
    'left unbled',
    FUEL,
    `
    disconnect feed-line
#   ^^^^^^^^^^^^^^^^^^^^ S308
    connect feed-line`,
  );
});

const LEVEL_PLUG = `${PLUGS.replace(
  '    fill at fill-plug',
  '    until level at level-plug\n    fill at fill-plug',
).replace(
  'fasteners',
  `fasteners
  level-plug: Level plug
    1 of M18x1.5
    torque 40 N·m, per ?`,
)}`;

describe('a tap', () => {
  example(
    'runs as soon as it is loose',
    PLUGS,
    `
    loosen drain-plug
    drain oil
    torque drain-plug
    remove fill-plug
    fill oil
    install fill-plug
    torque fill-plug`,
  );
});

describe('a level plug beside the fill plug', () => {
  example(
    'is what the level is read at, and fluid still goes in by the filler',
    LEVEL_PLUG,
    `${CHANGE}
    install fill-plug
    torque fill-plug
    run engine
    remove level-plug
    check-level oil
      if below limit
        top-up oil
#       ^^^^^^^^^^ S112 \`fill-plug\`
    install level-plug
    torque level-plug`,
  );
  example(
    'shut, no level is read',
    LEVEL_PLUG,
    `${CHANGE}
    check-level oil
#   ^^^^^^^^^^^^^^^ S112 \`level-plug\`
    install fill-plug
    torque fill-plug`,
  );
  example(
    'shut, nothing is filled until it runs over there',
    LEVEL_PLUG,
    `${CHANGE.replace('fill oil', 'fill oil, until level at level-plug')}
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S112 \`level-plug\`
    install fill-plug
    torque fill-plug`,
  );
});
