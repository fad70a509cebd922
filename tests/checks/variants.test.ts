// V: guards, and values that a combination lacks or has twice.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../language/src/diagnostics/define.js';
import { checkMarked, findingsOf } from '../suite-helper.js';
import { checkOnly } from './only.js';

const onlyV = (files: ReadonlyMap<string, string>): Finding[] =>
  findingsOf(files).filter((f) => f.code.startsWith('V'));

/** A procedure for two years bands and two options, with these lines under its bolts and in its step. */
function job(
  bolt: string,
  lines = '    torque axle-bolt\n',
  applies = 'applies to van from 2018 to 2025',
): string {
  return `--- file: a.bay
procedure A-1: Axle bolts, tighten

use "van.bay"

${applies}
sides left, right

fasteners
  axle-bolt: Axle bolts
    4 of M10x1.5, class 10.9, hex 16 mm
${bolt}
installation
  step: Tighten the bolts
${lines}--- file: van.bay
catalogue: Van

vehicles
  van: Delivery van
    years 2018 to 2025
    option axle light, heavy
    option engine petrol, diesel
  truck: Truck
    option axle heavy, double
`;
}

test('a value without a guard holds wherever no guarded one does', () => {
  checkMarked(job('    torque 55 N·m\n    torque 60 N·m, when axle heavy\n'), onlyV);
});

test.each([
  ['van from 2018 to 2025', '', ''],
  ['van from 2020', '', ''],
  ['truck from 1990 to 2030', '', ''],
  [
    'van from 2017 to 2025',
    '#                   ^^^^^^^^^^^^ V109 2018 to 2025, not of 2017',
    'from 2018 to 2025',
  ],
  [
    'van from 2020 to 2052',
    '#                   ^^^^^^^^^^^^ V109 2018 to 2025, not of 2052',
    'from 2018 to 2025',
  ],
  ['van from 2008', '#                   ^^^^ V109 not of 2008', 'from 2018'],
  ['van from 2025 to 2018', '#                   ^^^^^^^^^^^^ V109 the later year', 'from 2018 to 2025'],
])('model years: %s', (applies, mark, mended) => {
  const text = job(
    '    torque 55 N·m\n',
    undefined,
    `applies to ${applies}${mark === '' ? '' : `\n${mark}`}`,
  );
  const [found] = checkMarked(text, onlyV);
  if (mended !== '') expect(`from ${found?.fixes[0]?.edits[0]?.text}`).toBe(mended);
});

test('of a vehicle that is not known, no option is missed', () => {
  checkMarked(job('    torque 55 N·m\n', undefined, 'applies to vann, when axle light'), onlyV);
});

test('guarded values that cover all combinations', () => {
  checkMarked(job('    torque 55 N·m, when axle light\n    torque 60 N·m, when axle heavy\n'), onlyV);
  checkMarked(
    job('    torque 55 N·m, when year 2018 to 2020\n    torque 60 N·m, when year 2021 to 2025\n'),
    onlyV,
  );
  checkMarked(job('    torque 55 N·m, when side left\n    torque 60 N·m, when side right\n'), onlyV);
});

test('a gap, told in the fewest words, and the line that leaves it open', () => {
  const [found] = checkMarked(
    job(`    torque 55 N·m, when axle light
#   ^^^^^^^^^^^^^ V102 has no torque for some
    torque 60 N·m, when axle heavy and engine diesel
`),
    onlyV,
  );
  expect(found?.variants).toBe('axle heavy and engine petrol');
  expect(found?.fixes.map((fix) => fix.title)).toEqual([
    'Leave it open there: `torque ?, when axle heavy and engine petrol`',
  ]);
  const [years] = checkMarked(
    job(`    torque 55 N·m, when year 2018 to 2021
#   ^^^^^^^^^^^^^ V102
`),
    onlyV,
  );
  expect(years?.variants).toBe('year 2022 to 2025');
});

test('no value is missed where the work does not ask for one', () => {
  checkMarked(
    job('    torque 60 N·m, when axle heavy\n', '    when axle heavy\n      torque axle-bolt\n'),
    onlyV,
  );
  checkMarked(
    job('    torque 60 N·m, when axle heavy\n', '    torque axle-bolt\n', 'applies to van, when axle heavy'),
    onlyV,
  );
  checkMarked(job('    torque 60 N·m, when axle heavy\n', '    clean axle-bolt\n'), onlyV);
});

test('a gap in a catalogue is told where the work meets it', () => {
  const text = job(
    '    torque 55 N·m\n',
    '    torque axle-bolt\n    torque cap-bolt\n#          ^^^^^^^^ V102\n',
  );
  const [found] = checkMarked(
    `${text}
fasteners
  cap-bolt: Cap bolts
    2 of M8x1.25
    torque 22 N·m, when engine diesel
`,
    onlyV,
  );
  expect(found?.variants).toBe('engine petrol');
  expect(found?.related.map((r) => r.file)).toEqual(['van.bay']);
});

test('two values for one combination', () => {
  checkMarked(
    job(`    torque 55 N·m
    torque 60 N·m
#   ^^^^^^^^^^^^^ V103 two lines for its torque
`),
    onlyV,
  );
  const [found] = checkMarked(
    job(`    torque 50 N·m
    torque 55 N·m, when axle heavy
    torque 60 N·m, when engine diesel
#   ^^^^^^^^^^^^^ V103
`),
    onlyV,
  );
  expect(found?.variants).toBe('axle heavy and engine diesel');
});

test('guards that mean nothing here', () => {
  checkMarked(
    job(
      '    torque 55 N·m\n',
      `    torque axle-bolt
    when axle light
      clean axle-bolt, when axle heavy
#                           ^^^^^^^^^^ V104 axle heavy never holds
    clean axle-bolt, when axle double
#                              ^^^^^^ V106 is never
    clean axle-bolt, when gearbox manual
#                         ^^^^^^^ V105 no option
    clean axle-bolt, when year 1990 to 1995
#                         ^^^^^^^^^^^^^^^^^ V104
`,
    ),
    onlyV,
  );
});

test('a thing that is not on every vehicle', () => {
  checkMarked(
    job(
      '    torque 55 N·m\n    only when axle heavy\n',
      `    torque axle-bolt, when axle heavy
    clean axle-bolt
#         ^^^^^^^^^ V101
`,
    ),
    onlyV,
  );
});

test('the six design procedures have no fault of quantities, names or variants but the one they have', () => {
  const root = new URL('../fixtures/design/', import.meta.url);
  const files = new Map(
    readdirSync(root, { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.bay'))
      .map((path) => [path, readFileSync(new URL(path, root), 'utf8')]),
  );
  expect(files.size).toBeGreaterThan(10);
  const told = findingsOf(files)
    .filter((f) => /^[QNV]/.test(f.code))
    .map((f) => `${f.file} ${f.code} ${f.message}`);
  // The bleed screw's turns stand nowhere in its entry.
  expect(told).toEqual(['procedures/CH-08-clutch-hydraulics.bay N309 `bleed-screw` has no `turns`']);
});

describe('identification numbers', () => {
  const van = (vin: string) => `catalogue: Van

vehicles
  van: Delivery van
    vin ${vin}
`;
  test.each([
    ['a range', '1M8GDM9AXKP042788 to 1M8GDM9AXKP042788'],
    ['a European range without check digits', 'SX7M300ALJ1000001 to SX7M300ALS1999999'],
    ['one number', 'SX7M300ALJ1000001'],
    ['not known yet', '?'],
    ['over the turn of the year codes', 'SX7M300ALY1000001 to SX7M300AL11000001'],
    ['short', 'SX7M300 to SX7M300ALS1999999\n#       ^^^^^^^ V107 17 characters, this has 7'],
    ['a check digit that does not add up', '1M8GDM9A1KP042788\n#       ^^^^^^^^^^^^^^^^^ V107 should be X'],
    [
      'two lines',
      'SX7M300ALJ1000001 to SX7M400ALS1999999\n#       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ V108 different vehicle lines',
    ],
    [
      'a later serial first',
      'SX7M300ALJ1000009 to SX7M300ALJ1000001\n#       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ V108 later number',
    ],
  ])('%s', (_, vin) => {
    checkOnly(van(vin), 'V107', 'V108');
  });
});
