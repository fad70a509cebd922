// The vehicle: on the ground, raised, supported; chocks, suspension, conditions, running and driving.
import { describe } from 'vitest';
import { example } from './job.js';

const WHEEL = `
parts
  wheel: Wheel
    held by nut
    marked wheel
fasteners
  nut: Nuts
    5 of M14x1.5
    torque 160 N·m, on ground, per ?
  bush: Bush bolt
    1 of M12x1.5
    torque 90 N·m, at ride height, per ?
places
  rear: Rear wheels
conditions
  selector: Selector
    park, neutral
  heat: Engine temperature
    cold, hot
    free
tools
  lift: Lift
    rated 3000 kg
    marked holds-load
temporary
  rag: Rag
`;
const UP = `
    raise vehicle
    support vehicle`;
const OFF = `${UP}
    remove nut, wheel`;

describe('posture', () => {
  example(
    'up, supported, down',
    WHEEL,
    `${UP}
    lower vehicle`,
  );
  example(
    'supported before it is up',
    WHEEL,
    `
    support vehicle
#   ^^^^^^^^^^^^^^^ S113 on the ground
    raise vehicle
    lower vehicle`,
  );
  example(
    'raised twice',
    WHEEL,
    `${UP}
    raise vehicle
#   ^^^^^^^^^^^^^ S113 already supported
    lower vehicle`,
  );
  example(
    'left in the air',
    WHEEL,
    `
    raise vehicle
    support vehicle
#   ^^^^^^^^^^^^^^^ S313`,
  );
  example(
    'a lift supports as well as raises',
    WHEEL,
    `
    raise vehicle with lift
    support vehicle
#   ^^^^^^^^^^^^^^^ S113 already raised
    lower vehicle`,
  );
});

describe('wheels', () => {
  example(
    'loose nuts in the air are normal',
    WHEEL,
    `
    loosen nut${OFF}
    install wheel, nut
    snug nut
    lower vehicle
    torque nut`,
  );
  example(
    'lowered with a wheel off',
    WHEEL,
    `${OFF}
    lower vehicle
#   ^^^^^^^^^^^^^ S304 \`nut\` and \`wheel\`
    install wheel, nut
    torque nut`,
  );
  example(
    'lowered with nuts not snug',
    WHEEL,
    `${OFF}
    install wheel, nut
    lower vehicle
#   ^^^^^^^^^^^^^ S304
    torque nut`,
  );
  example(
    'driven with nuts not torqued',
    WHEEL,
    `${OFF}
    install wheel, nut
    snug nut
#   ^^^^^^^^ S303
    lower vehicle
    road-test vehicle`,
  );
});

describe('torque posture', () => {
  example(
    'on the ground, asked for in the air',
    WHEEL,
    `
    loosen nut
    raise vehicle
    torque nut
#   ^^^^^^^^^^ F301 in the air
    lower vehicle`,
  );
  example(
    'at ride height, with the suspension hanging',
    WHEEL,
    `
    raise vehicle
    loosen bush
    torque bush
#   ^^^^^^^^^^^ F301 away from ride height
    lower vehicle`,
  );
  example(
    'at ride height on a jack',
    WHEEL,
    `
    raise vehicle
    loosen bush
    load suspension
    torque bush
    unload suspension
    lower vehicle`,
  );
  example(
    'at ride height on the ground',
    WHEEL,
    `
    loosen bush
    torque bush`,
  );
  example(
    'lowered with the jack under the arm',
    WHEEL,
    `
    raise vehicle
    load suspension
    lower vehicle
#   ^^^^^^^^^^^^^ S114
    unload suspension`,
  );
});

describe('chocks', () => {
  example(
    'left under',
    WHEEL,
    `
    chock rear
#   ^^^^^^^^^^ S312`,
  );
  example(
    'driven against',
    WHEEL,
    `
    chock rear
    road-test vehicle
#   ^^^^^^^^^^^^^^^^^ S201 \`rear\`
    unchock rear`,
  );
  example(
    'driven against, and put there again after it: the last line takes away the second ones',
    WHEEL,
    `
    chock rear
#   ^^^^^^^^^^ S312
    road-test vehicle
    chock rear
    unchock rear`,
  );
  example(
    'taken away twice',
    WHEEL,
    `
    chock rear
    unchock rear
    unchock rear
#   ^^^^^^^^^^^^ S110`,
  );
});

describe('conditions', () => {
  example(
    'come back to where they rest',
    WHEEL,
    `
    set selector neutral
    set selector park`,
  );
  example(
    'a `set` to the value it has makes sure',
    WHEEL,
    `
    set selector park`,
  );
  example(
    'the last `set` is blamed',
    WHEEL,
    `
    set selector neutral
    set selector park
    set selector neutral
#   ^^^^^^^^^^^^^^^^^^^^ S309 \`park\``,
  );
  example(
    'free ones need not come back',
    WHEEL,
    `
    set heat hot`,
  );
  example(
    'prerequisites say where it starts and ends',
    `
conditions
  forks: Forks
    raised, lowered
prerequisites
  forks lowered`,
    `
    set forks raised
    set forks lowered`,
  );
});

describe('driving and running', () => {
  example(
    'with something left off: told where it was left',
    WHEEL,
    `
    raise vehicle
    remove nut, wheel
#   ^^^^^^^^^^^^^^^^^ S301
    lower vehicle
    road-test vehicle`,
  );
  example(
    'with a rag still placed',
    WHEEL,
    `
    place rag
    road-test vehicle
#   ^^^^^^^^^^^^^^^^^ S201 \`rag\`
    remove rag`,
  );
});

describe('two things left before a drive', () => {
  example(
    'are told both, each where it was left',
    `
parts
  cover: Cover
temporary
  pan: Pan
`,
    `
    place pan
#   ^^^^^^^^^ S305 \`pan\`
    remove cover
#   ^^^^^^^^^^^^ S301 \`cover\`
    road-test vehicle`,
  );
});
