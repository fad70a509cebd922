// All combinations at once: options, years, sides; things that exist on some vehicles only.
import { describe, expect, test } from 'vitest';
import { afterFix } from '../../suite-helper.js';
import { example, job, ofState } from './job.js';

const VAN = `
applies to van
vehicles
  van: Van
    years 2018 to 2025
    option axle light, heavy
    option engine petrol, diesel
parts
  arm: Arm
    held by bolt
  heater: Fuel heater
    only when engine diesel
  shield: Shield
    only when axle heavy
  sensor: Sensor
    behind shield
fasteners
  bolt: Bolts
    2 of M10x1.5
    torque 50 N·m, per ?
    torque 60 N·m, per ?, when axle heavy
`;

describe('a guarded line', () => {
  example(
    'taken off and put back under the same guard',
    VAN,
    `
    when axle heavy
      remove shield
    install shield, when axle heavy`,
  );
  example(
    'put back under a narrower guard',
    VAN,
    `
    remove bolt, arm
#   ^^^^^^^^^^^^^^^^ S301
    install arm, bolt, when axle heavy
    torque bolt, when axle heavy`,
  );
  example(
    'put back on each branch of an option',
    VAN,
    `
    remove bolt, arm
    when engine petrol
      install arm, bolt
      torque bolt
    when engine diesel
      install arm, bolt
      torque bolt`,
  );
  example(
    'torqued on some vehicles only',
    VAN,
    `
    loosen bolt
#   ^^^^^^^^^^^ S303
    torque bolt, when engine petrol`,
  );
  example(
    'by years',
    VAN,
    `
    loosen bolt, when year 2018 to 2020
    torque bolt, when year 2018 to 2020`,
  );
  example(
    'by years that do not meet',
    VAN,
    `
    loosen bolt, when year 2018 to 2021
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ S303
    torque bolt, when year 2018 to 2020`,
  );
});

describe('a thing that exists on some vehicles', () => {
  example(
    'used on all',
    VAN,
    `
    remove heater
#          ^^^^^^ V101
    install heater, when engine diesel`,
  );
  example(
    'covers only where it is fitted',
    VAN,
    `
    remove sensor
#   ^^^^^^^^^^^^^ S104
    install sensor`,
  );
  example(
    'is off where it must be, and counts as off elsewhere',
    VAN,
    `
    remove shield, when axle heavy
    remove sensor
    install sensor
    install shield, when axle heavy`,
  );
});

describe('two sides', () => {
  const SIDES = `
sides left, right
parts
  lower-arm: Arm
    number "L", when side left
    number "R", when side right
  lamp: Lamp
    only when side left`;
  example(
    'one is run at a time',
    SIDES,
    `
    remove lower-arm
    install lower-arm`,
  );
  example(
    'a line for one side only',
    SIDES,
    `
    remove lower-arm
#   ^^^^^^^^^^^^^^^^ S301
    install lower-arm, when side left`,
  );
  example(
    'a thing on one side only',
    SIDES,
    `
    remove lamp
#          ^^^^ V101
    install lamp, when side left`,
  );
});

describe('a part on some vehicles only, and its bolts', () => {
  const PIPE = `
applies to van
vehicles
  van: Van
    option engine petrol, diesel
parts
  pipe: Pipe
    held by pipe-bolt
    only when engine diesel
fasteners
  pipe-bolt: Bolts
    2 of M8x1.25
    torque 20 N·m, per ?`;
  example(
    'the line that forgets the guard is told of, not its bolts on the other vehicles',
    PIPE,
    `
    remove pipe-bolt, pipe, when engine diesel
    install pipe, pipe-bolt
#           ^^^^ V101
    torque pipe-bolt`,
  );
  test('the guard of the part is offered for the line with its bolts', () => {
    const text = job(
      PIPE,
      'remove pipe-bolt, pipe\ninstall pipe, pipe-bolt, when engine diesel\ntorque pipe-bolt, when engine diesel',
    );
    const files = new Map([['main.bay', text]]);
    const [found] = ofState(files);
    expect(found?.fixes.map((fix) => fix.title)).toEqual(['Add `when engine diesel`']);
    expect(ofState(afterFix(files, found?.fixes[0]?.edits ?? []))).toEqual([]);
  });
});
