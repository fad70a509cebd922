// Ways round: `if`, `otherwise`, `stop`, `repeat`. Both paths are checked, and they must come back together.
import { describe } from 'vitest';
import { example } from './job.js';

const DISC = `
parts
  disc: Disc
    held by screw
  pads: Pads
fasteners
  screw: Screw
    1 of M6x1.0
    torque 8 N·m, per ?
limits
  thickness: Thickness
    at least 22 mm, per ?
adjustments
  toe: Toe
    disturbed by disc
fluids
  oil: Oil
    settle 5 min
`;

describe('paths that come back together', () => {
  example(
    'renewing what is off changes newness only',
    DISC,
    `
    remove screw, disc
    measure thickness
      if below limit
        renew disc
    install disc, screw
    torque screw
    adjust toe`,
  );
  example(
    'taken off again in a branch, and never put back before: the missing line is the fault',
    DISC,
    `
    remove screw, disc
#   ^^^^^^^^^^^^^^^^^^ S301
    measure thickness
      if below limit
        remove screw, disc
        install disc, screw
        torque screw
    adjust toe`,
  );
  example(
    'loosened again in a branch, and never torqued before',
    DISC,
    `
    remove screw, disc
    install disc, screw
#   ^^^^^^^^^^^^^^^^^^^ S303
    measure thickness
      if below limit
        loosen screw
        torque screw
    adjust toe`,
  );
  example(
    'work that is whole in itself',
    DISC,
    `
    inspect pads
      if rejected
        remove pads
        renew pads
        install pads`,
  );
  example(
    'a path that stops owes nothing',
    DISC,
    `
    inspect pads
      if rejected
        remove pads
        stop: Call the shop lead.`,
  );
  example(
    'a level topped up on one path only',
    DISC,
    `
    check-level oil
      if below limit
        top-up oil
        wait 5 min
        check-level oil`,
  );
  example(
    'done on both paths',
    DISC,
    `
    inspect pads
      if rejected
        remove pads
      otherwise
        remove pads
    install pads`,
  );
});

describe('paths that do not', () => {
  example(
    'a part off on one path',
    DISC,
    `
    inspect pads
      if rejected
#     ^^^^^^^^^^^ S401 \`pads\`
        remove pads`,
  );
  example(
    'a bolt left loose on one path',
    DISC,
    `
    inspect disc
      if rejected
#     ^^^^^^^^^^^ S401 \`screw\`
        loosen screw`,
  );
  example(
    'a fault inside a path is told there',
    DISC,
    `
    inspect disc
      if rejected
        remove disc
#       ^^^^^^^^^^^ S103
        install disc
        adjust toe`,
  );
});

describe('one outcome asked for twice', () => {
  example(
    'what one path took off, the same path puts back',
    DISC,
    `
    measure thickness
    if thickness below limit
      remove pads
    clean disc
    if thickness below limit
      install pads`,
  );
  example(
    'what one path took off, another puts back: told at the line that cannot be done',
    DISC,
    `
    measure thickness
    if thickness below limit
      remove pads
    clean disc
    if thickness above limit
      install pads
#     ^^^^^^^^^^^^ S102`,
  );
});

describe('if needed', () => {
  example(
    'both ways are checked',
    DISC,
    `
    remove screw
    if needed: It sticks.
      loosen screw
#     ^^^^^^^^^^^^ S106
    remove disc
    install disc, screw
    torque screw
    adjust toe`,
  );
});

describe('stop', () => {
  example(
    'what nobody reaches behind it',
    DISC,
    `
    inspect pads
      if rejected
        stop: Renew them.
      otherwise
        stop: Done.
  step: Clean
# ^^^^ S402
    clean pads`,
  );
});

describe('repeat', () => {
  example(
    'ends as it began',
    DISC,
    `
    repeat 2 times
      remove pads
      install pads`,
  );
  example(
    'cannot be done a second time',
    DISC,
    `
    repeat 2 times
      remove pads
#     ^^^^^^^^^^^ S101
    install pads`,
  );
});

const STROKE = `
parts
  chamber: Chamber
adjustments
  stroke: Push rod stroke
    disturbed by chamber
    limit rod-stroke
limits
  rod-stroke: Stroke
    38 to 45 mm, per ?
`;

describe('a setting that is measured and put right where it is outside its limit', () => {
  const off = `
    remove chamber
    install chamber
    measure rod-stroke`;
  example('is set either way', STROKE, `${off}\n      if outside limit\n        adjust stroke`);
  example(
    'is set either way, one side at a time',
    STROKE,
    `${off}\n      if below limit\n        adjust stroke\n      if above limit\n        adjust stroke`,
  );
  example(
    'is set either way where the result is asked for by name',
    STROKE,
    `${off}\n    if rod-stroke outside limit\n      adjust stroke`,
  );
  example(
    'is set where the job ends with it outside',
    STROKE,
    `${off}\n      if outside limit\n        stop: Call the shop lead.`,
  );
  example(
    'is not set where nothing puts it right',
    STROKE,
    `
    remove chamber
#   ^^^^^^^^^^^^^^ S311
    install chamber
    measure rod-stroke
      if outside limit
        note: Too long.`,
  );
});
