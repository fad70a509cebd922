// Sets of fasteners: counts, stages, single use, what they hold.
import { describe } from 'vitest';
import { example } from './job.js';

const THINGS = `
parts
  cover: Cover
    held by bolt
fasteners
  bolt: Bolts
    10 of M8x1.25
    torque 10 N·m then 25 N·m, per ?
`;
const ONCE = THINGS.replace('    torque', '    renew\n    torque');
const CLIP = `
parts
  cover: Cover
    held by clip
fasteners
  clip: Clips
    4 of clip
`;
const HAND = `
fasteners
  wing: Wing nuts
    2 of M6x1.0
    no torque: by hand
`;

describe('loosen', () => {
  example(
    'and torque again',
    THINGS,
    `
    loosen bolt
    torque bolt`,
  );
  example(
    'what is loose already',
    THINGS,
    `
    loosen bolt
    loosen bolt
#   ^^^^^^^^^^^ S106 already loose
    torque bolt`,
  );
  example(
    'more than are tight',
    THINGS,
    `
    loosen 8 of bolt
    loosen 4 of bolt
#   ^^^^^^^^^^^^^^^^ S106
    torque bolt`,
  );
  example(
    'part of the set, twice',
    THINGS,
    `
    loosen 8 of bolt
    loosen 2 of bolt
    torque bolt`,
  );
});

describe('remove', () => {
  example(
    'takes the tightest first and leaves the loosened ones in',
    THINGS,
    `
    loosen 1 of bolt
    remove 9 of bolt
    remove bolt, cover
    install cover, bolt
    torque bolt`,
  );
  example(
    'more than are left',
    THINGS,
    `
    remove 8 of bolt
    remove 3 of bolt
#   ^^^^^^^^^^^^^^^^ S101
    install bolt
    torque bolt`,
  );
  example(
    'what is out already',
    THINGS,
    `
    remove bolt
    remove bolt, cover
#   ^^^^^^^^^^^^^^^^^^ S101 already off
    install cover, bolt
    torque bolt`,
  );
  example(
    'without a count takes all that remain',
    THINGS,
    `
    remove 4 of bolt
    remove bolt
    install bolt
    torque bolt`,
  );
});

describe('install', () => {
  example(
    'what never came out',
    THINGS,
    `
    install bolt
#   ^^^^^^^^^^^^ S102 still on
    torque bolt`,
  );
  example(
    'before the part it holds',
    THINGS,
    `
    remove bolt, cover
    install bolt
#   ^^^^^^^^^^^^ S201 \`cover\` is put on only later, and must be before \`bolt\`
    install cover
    torque bolt`,
  );
  example(
    'part of the set',
    THINGS,
    `
    remove bolt, cover
    install cover
    install 2 of bolt
    install 8 of bolt
    torque bolt`,
  );
  example(
    'clips hold as soon as they are on',
    CLIP,
    `
    remove clip, cover
    install cover, clip`,
  );
});

describe('torque', () => {
  example(
    'with some of the set still out',
    THINGS,
    `
    remove 4 of bolt
    torque bolt
#   ^^^^^^^^^^^ S201
    install 4 of bolt
    torque bolt`,
  );
  example(
    'never',
    THINGS,
    `
    remove bolt, cover
    install cover, bolt
#   ^^^^^^^^^^^^^^^^^^^ S303 never torqued`,
  );
  example(
    'loosened and never torqued',
    THINGS,
    `
    loosen 2 of bolt
#   ^^^^^^^^^^^^^^^^ S303`,
  );
  example(
    'snug is not torqued',
    THINGS,
    `
    loosen bolt
    snug bolt
#   ^^^^^^^^^ S303`,
  );
  example(
    'stage by stage',
    THINGS,
    `
    loosen bolt
    torque bolt, stage 1
    torque bolt, stage 2`,
  );
  example(
    'only to the first stage',
    THINGS,
    `
    loosen bolt
    torque bolt, stage 1
#   ^^^^^^^^^^^^^^^^^^^^ S303`,
  );
  example(
    'a stage before its turn',
    THINGS,
    `
    loosen bolt
    torque bolt, stage 2
#   ^^^^^^^^^^^^^^^^^^^^ F304`,
  );
  example(
    'hand-tight fasteners owe no torque',
    HAND,
    `
    remove wing
    install wing`,
  );
  example(
    'hand-tight fasteners are not left loose',
    HAND,
    `
    loosen wing
#   ^^^^^^^^^^^ S303 never tightened`,
  );
});

describe('single use', () => {
  example(
    'loosened and torqued again',
    ONCE,
    `
    loosen bolt
    torque bolt
#   ^^^^^^^^^^^ F303 single-use`,
  );
  example(
    'out and in again is a new one',
    ONCE,
    `
    remove bolt
    install bolt
    torque bolt`,
  );
  example(
    'torqued in stages is one tightening',
    ONCE,
    `
    remove bolt
    install bolt
    torque bolt, stage 1
    torque bolt, stage 2`,
  );
});

describe('renew', () => {
  example(
    'while in place',
    THINGS,
    `
    renew bolt
#   ^^^^^^^^^^ S115
    remove bolt
    install bolt
    torque bolt`,
  );
  example(
    'while out',
    THINGS,
    `
    remove bolt
    renew bolt
    install bolt
    torque bolt`,
  );
});
