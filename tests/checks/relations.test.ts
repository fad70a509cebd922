// Relations in rings, and the order in which things come off.
import { describe, expect, test } from 'vitest';
import { createLibrary } from '../../language/src/analysis.js';
import { removalOrder } from '../../language/src/names/removal-order.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';
import { findingsOf } from '../suite-helper.js';
import { checkOnly } from './only.js';

const van = `vehicles
  van: Van
    option axle light, heavy
`;

describe('rings', () => {
  test.each([
    [
      'a thing behind itself',
      `catalogue: T

parts
  cover: Cover
    behind cover
#          ^^^^^ N214 cover behind cover
`,
    ],
    [
      'three in a ring, told once, at the first',
      `catalogue: T

parts
  a: A
    behind b
#          ^ N214 can never come off: a behind b, b held by c, c behind a
  b: B
    held by c
  c: C
    behind a
`,
    ],
    [
      'two rings are two findings',
      `catalogue: T

parts
  a: A
    behind b
#          ^ N214
  b: B
    behind a
  c: C
    held by d
#           ^ N214
  d: D
    behind c
`,
    ],
    [
      'in each other',
      `catalogue: T

parts
  a: A
    in b
#      ^ N214 \`a\` is in itself
  b: B
    in a
`,
    ],
    [
      'a bolt that rides in the part it holds is none',
      `catalogue: T

parts
  hub: Hub
    held by hub-bolt

fasteners
  hub-bolt: Bolts
    in hub
`,
    ],
    [
      'a connector on the sensor it holds is none',
      `catalogue: T

parts
  sensor: Sensor
    held by plug

connections
  plug: Plug
    on sensor
`,
    ],
    [
      'guards that exclude each other',
      `procedure A-1: T

applies to van

${van}
parts
  a: A
    behind b, when axle heavy
  b: B
    behind a, when axle light
`,
    ],
    [
      'guards that hold together',
      `procedure A-1: T

applies to van

${van}
parts
  a: A
    behind b, when axle heavy
#          ^ N214
  b: B
    behind a, when axle heavy
`,
    ],
    [
      'a thing that exists on other vehicles only',
      `procedure A-1: T

applies to van

${van}
parts
  a: A
    behind b, when axle heavy
  b: B
    only when axle light
    behind a
`,
    ],
    [
      'a guard in a catalogue, where options have no meaning yet',
      `catalogue: T

${van}
parts
  a: A
    behind b, when axle heavy
  b: B
    behind a, when axle light
`,
    ],
  ])('%s', (_, text) => {
    checkOnly(text, 'N214');
  });
});

describe('what comes off first', () => {
  const text = `procedure A-1: T

parts
  wheel: Wheel
    held by wheel-nut
  caliper: Caliper
    held by caliper-bolt
  disc: Disc
    behind wheel, caliper
  sensor: Sensor
    behind disc

fasteners
  wheel-nut: Nuts
    5 of M12x1.5
  caliper-bolt: Bolts
    2 of M10x1.5
    behind wheel

connections
  plug: Plug
    on sensor
`;
  const library = createLibrary({ read: () => text, list: () => ['a.bay'] }, DEFAULT_SETTINGS);
  const order = (name: string) => {
    const job = library.analyse('a.bay')?.job;
    const thing = job?.scope.resolve(name);
    return job && thing ? removalOrder(job, thing).map((b) => `${b.depth} ${b.thing.name}`) : [];
  };

  test('the nearest first, each once', () => {
    expect(order('disc')).toEqual(['0 wheel', '0 caliper', '1 wheel-nut', '1 caliper-bolt']);
  });
  test('connections on it, and what hides it', () => {
    expect(order('sensor')).toEqual([
      '0 disc',
      '0 plug',
      '1 wheel',
      '1 caliper',
      '2 wheel-nut',
      '2 caliper-bolt',
    ]);
  });
  test('nothing before what is free', () => {
    expect(order('wheel-nut')).toEqual([]);
  });
});

test('a part that is pressed by a length, or that another line takes off, is no part that is forgotten', () => {
  const job = (work: string) =>
    new Map([
      [
        'main.bay',
        `procedure A-1: Bush, press

parts
  arm: Arm
  bush: Bush
    in arm

removal
  step: Out
${work}`,
      ],
    ]);
  const codes = (work: string) =>
    findingsOf(job(work)).flatMap(({ code }) => (code === 'S316' ? [code] : []));
  expect(codes('    press bush from arm\n')).toEqual(['S316']);
  expect(codes('    tap bush into arm\n    pull bush from arm\n')).toEqual(['S316']);
  expect(codes('    press bush, 5 mm, from arm\n')).toEqual([]);
  expect(codes('    press bush, 20 kN, from arm\n    remove bush\n    install bush\n')).toEqual([]);
  expect(codes('    press arm\n')).toEqual([]);
});
