// N: names, the kinds that verbs and clauses take, imports and references.
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../language/src/diagnostics/define.js';
import { afterFix, checkMarked, findingsOf, readMarked } from '../suite-helper.js';

const onlyN = (files: ReadonlyMap<string, string>): Finding[] =>
  findingsOf(files).filter((f) => f.code.startsWith('N'));

const HEAD = `procedure A-1: Hub, replace

parts
  hub: Hub
    held by hub-bolt

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m

conditions
  selector: Gear selector
    park, neutral

removal
  step: Take the hub off
    set selector park
`;

/** A procedure with these lines in its step. */
const job = (lines: string): string => HEAD + lines;

describe('undeclared names', () => {
  test('one finding for a name, its other uses beside it', () => {
    const [found, ...others] = checkMarked(
      job(`    remove hub-bolt, hub
    remove wheel-stud
#          ^^^^^^^^^^ N101 \`wheel-stud\` is not declared
    install wheel-stud
    torque wheel-stud
`),
      onlyN,
    );
    expect(others).toEqual([]);
    expect(found?.related).toHaveLength(2);
    expect(found?.fixes.map((fix) => fix.title)).toEqual(['Declare `wheel-stud` as a set of fasteners']);
  });

  test('a slip of the fingers is met with the name that was meant, and all uses are mended', () => {
    const text = job(`    remove hub-blot
#          ^^^^^^^^ N101
    remove hub
    torque hub-blot
`);
    const [found] = checkMarked(text, onlyN);
    expect(found?.advice).toBe('did you mean `hub-bolt`?');
    expect(onlyN(afterFix(readMarked(text).files, found?.fixes[0]?.edits ?? []))).toEqual([]);
  });

  test('all of them are declared at once, each with the kind its uses leave', () => {
    const text = job(`    set ignition off
    remove hub-bolt, hub
    disconnect sensor-plug
    fill gear-oil at filler
    measure disc-runout
    apply seal-paste to knuckle-face
    chock rear-wheels
`);
    const found = onlyN(readMarked(text).files);
    const all = found[0]?.fixes.find((fix) => fix.title.startsWith('Declare all'));
    expect(all?.title).toBe('Declare all 8 undeclared names');
    const mended = afterFix(readMarked(text).files, all?.edits ?? []);
    expect(onlyN(mended)).toEqual([]);
    const lines = [...mended.values()].join('\n');
    expect(lines).toContain('connections\n  sensor-plug: Sensor plug\n');
    expect(lines).toContain('fluids\n  gear-oil: Gear oil\n');
    expect(lines).toContain('  ignition: Ignition\n    off\n');
    expect(lines).toContain('supplies\n  seal-paste: Seal paste\n');
    expect(lines).toContain(
      'places\n  filler: Filler\n  knuckle-face: Knuckle face\n  rear-wheels: Rear wheels\n',
    );
  });

  test('the entries of a catalogue may name what each procedure declares', () => {
    checkMarked(
      `catalogue: Axles

fluids
  drive-oil: Axle oil
    drain at drive-cover
`,
      onlyN,
    );
  });

  test('names on entries that cannot be read are left alone', () => {
    checkMarked(
      `procedure A-1: Hub, replace

parts
  spacer, 3 of: Spacer

removal
  step: Take the hub off
    remvoe shim, washer
    remove spacer, shim
#                  ^^^^ N101
`,
      onlyN,
    );
  });

  test.each([
    ['measure charge-voltage', 'charge-voltage', 'a limit'],
    ['adjust belt-tension', 'belt-tension', 'an adjustment'],
    ['connect hose with wire-brush at knuckle-face', 'knuckle-face', 'a place'],
    ['align hub to upper-frame', 'upper-frame', 'a place'],
    ['apply ? to knuckle', 'knuckle', 'a place'],
    ['hang hub on spring-seat', 'spring-seat', 'a place'],
    ['loosen cable-stop', 'cable-stop', 'a set of fasteners'],
    ['loosen stop-nut\n    adjust stop-nut', 'stop-nut', 'a set of fasteners'],
    ['clean knuckle\n    remove knuckle', 'knuckle', 'a part'],
    ['support subframe', 'subframe', 'a part'],
  ])('%s: `%s` is declared as %s', (line, name, kind) => {
    const found = findingsOf(readMarked(job(`    ${line}\n`)).files).filter((f) => f.code === 'N101');
    const titles = found.flatMap((f) => f.fixes.map((fix) => fix.title));
    expect(titles).toContain(`Declare \`${name}\` as ${kind}`);
  });

  test('the places of fluids and faces of sealed joints are places', () => {
    const text = `procedure A-1: Cover, reseal

parts
  cover: Cover
    sealed with axle-sealant on cover-face

fluids
  oil: Oil
    in rear-case
    until level at sight-glass
`;
    const all = onlyN(readMarked(text).files)
      .flatMap((f) => f.fixes)
      .find((fix) => fix.title.startsWith('Declare all'));
    const mended = [...afterFix(readMarked(text).files, all?.edits ?? []).values()].join('');
    expect(mended).toContain(
      'places\n  cover-face: Cover face\n  rear-case: Rear case\n  sight-glass: Sight glass\n',
    );
  });

  test('a vehicle by its own name is `vehicle` to the verbs that move it', () => {
    const [truck, motor] = checkMarked(
      job(`    raise truck
#         ^^^^^ N101 \`truck\` is not declared
    support truck
    lower truck
    run motor
#       ^^^^^ N101
`),
      onlyN,
    );
    expect(truck?.fixes[0]).toMatchObject({ title: 'Write `vehicle`', preferred: true });
    expect(truck?.fixes[0]?.edits).toHaveLength(3);
    expect(motor?.fixes[0]?.title).toBe('Write `engine`');
  });
});

describe('what a lead types in a hurry', () => {
  test('a condition is set, whatever verb stands before it', () => {
    const [found] = checkMarked(
      job(`    lower selector
#         ^^^^^^^^ N201
`),
      onlyN,
    );
    expect(found?.fixes.map((fix) => fix.title)).toEqual([
      'Write `set selector park`',
      'Write `set selector neutral`',
    ]);
    expect(
      [...afterFix(readMarked(job('    lower selector\n')).files, found?.fixes[0]?.edits ?? []).values()][0],
    ).toContain('    set selector park\n    set selector park\n');
  });

  test('a state behind a condition is met with `set`', () => {
    const [found] = checkMarked(
      job(`    turn selector off
#                 ^^^ G203
`),
      (files) => findingsOf(files).filter((f) => f.code === 'G203'),
    );
    expect(found?.advice).toBe('a condition is set: `set selector off`');
  });

  test('values behind `measure` belong to the limit, whatever their unit', () => {
    const text = job(`    measure lever-travel, 4 to 6 clocks
#                         ^^^^^^^^^^^^^ N203
`).replace('removal', 'limits\n  lever-travel: Travel of the lever\n    4 to 6 clicks, per ?\n\nremoval');
    const found = checkMarked(text, (files) =>
      findingsOf(files).filter((f) => /^(N|Q1)/.test(f.code) && f.code !== 'Q120'),
    );
    expect(found[0]?.advice).toBe(
      'the values stand at the limit, below `lever-travel: …` in `limits`: `4 to 6 clocks`',
    );
  });

  test('one side of a job for both is said with a guard', () => {
    const text = job(`    clean hub, side left
#              ^^^^^^^^^ N203 \`clean\` takes no \`side\`
`).replace('parts', 'sides left, right\n\nparts');
    const [found] = checkMarked(text, onlyN);
    expect(found?.advice).toBe('for one side only, write `when side left`');
    expect(onlyN(afterFix(readMarked(text).files, found?.fixes[0]?.edits ?? []))).toEqual([]);
  });

  test('a bare length behind a thread is first of all the spanner', () => {
    const found = onlyN(readMarked(job('').replace('hex 18 mm', '18 mm')).files);
    expect(found.map((f) => f.code)).toEqual(['N205']);
    expect(found[0]?.fixes[0]?.title).toBe('Write `hex` before it');
  });

  test('the oil of the gearbox may be what a lip is oiled with', () => {
    checkMarked(
      job(`    lubricate hub with gear-oil
    flush hub with gear-oil
`).replace('removal', 'fluids\n  gear-oil: Gear oil\n\nremoval'),
      onlyN,
    );
  });
});

describe('declarations', () => {
  test('twice in one file, and over a catalogue', () => {
    checkMarked(
      `--- file: procedures/a.bay
procedure A-1: Hub, look at

use "../van.bay"

places
  bore: Bore
  bore: Bore
# ^^^^ N102

inspection
  step: Look
    clean bore
--- file: van.bay
catalogue: Van

places
  rim: Rim
`,
      onlyN,
    );
  });

  test('unused, but not what the work hears of without its name', () => {
    checkMarked(
      `procedure A-1: Hub, look at

sources
  HL-1: Sheet

parts
  hub: Hub
    held by hub-bolt
  spacer: Spacer
    in hub
  shim: Shim
# ^^^^ N104 declared and never used

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5

tools
  hub-puller: Hub puller
  lamp: Hand lamp
  torque-wrench: Torque wrench
    torque 40 to 200 N·m

inspection
  step: Look
    remove hub-bolt with hub-puller
    clean hub-bolt: Use the hand lamp.
`,
      onlyN,
    );
  });
});

describe('what verbs and clauses take', () => {
  test.each([
    [
      'remove selector',
      'N201 `selector` is a condition; `remove` takes parts, fasteners and temporary things',
    ],
    [
      'remove vehicle',
      'N201 `vehicle` is part of the vehicle itself; `remove` takes parts, fasteners and temporary things',
    ],
    ['run vehicle', 'N212 `run` takes `engine`, not `vehicle`'],
    ['raise engine', 'N212 `raise` takes `vehicle`, not `engine`'],
    [
      'remove hub with hub-bolt',
      'N202 `hub-bolt` is a set of fasteners; `with` names tools, supplies and temporary things',
    ],
    ['remove hub until level at hub', 'N203 `remove` takes no `until level at`'],
    ['remove hub, 3 mm', 'N203 `remove` takes no figure'],
    ['remove', 'N208 `remove` says not what; it takes parts, fasteners and temporary things'],
    ['wait', 'N204 `wait` says no `time`'],
    ['wait hub, 10 min', 'N209 `wait` acts on nothing; `hub` is too much'],
    ['torque 2 of hub-bolt', 'N210 `torque` takes no count'],
    ['set selector', 'N207 the value of `selector` is missing'],
    ['set selector drive', 'N206 `selector` has no value `drive`'],
    ['run engine, at idle', 'N213 `at` of `run` takes a rotation speed'],
    ['clean hub with 3 mm', 'N213 `with` of `clean` takes tools, supplies and temporary things'],
  ])('%s', (line, expected) => {
    const told = onlyN(
      readMarked(job(`    ${line}\n    clean hub, hub-bolt\n    set selector park\n`)).files,
    ).map((f) => `${f.code} ${f.message}`);
    expect(told).toEqual([expected]);
  });

  test('what a clause is called is declared by a longer name', () => {
    const text =
      'procedure A-1: Job\n\nplaces\n  face: Face\n\ninspection\n  step: Look\n    clean face with cleaner\n';
    const [found] = onlyN(readMarked(text).files);
    expect(found?.fixes.map((fix) => fix.title)).toEqual(['Declare `shop-cleaner` as a supply']);
    const mended = afterFix(readMarked(text).files, found?.fixes[0]?.edits ?? []);
    expect(onlyN(mended)).toEqual([]);
  });

  test('a trouble code is no name', () => {
    const [found] = onlyN(
      readMarked(job('    record P0301\n    clean hub, hub-bolt\n    set selector park\n')).files,
    );
    expect(found?.fixes.map((fix) => fix.title)).toEqual(['Write `codes`']);
  });

  test('an operation or a limit on a line that could not be read is not asked for', () => {
    const text = `procedure A-1: Job

limits
  gap: Gap
    > 3 mm

operation swap: Swap
  step: Swap

inspection
  step: Look
    measure gap
      if below limit
        perform swap
`;
    const codes = findingsOf(readMarked(text).files).map((f) => f.code);
    expect(codes.filter((code) => /^[GNQ]/.test(code))).toEqual(['G201', 'G202']);
  });

  test('what to do instead is said where it is known', () => {
    const fleet = '\nvehicles\n  tipper: Tipper\n\nlimits\n  relief: Relief pressure\n    205 to 215 bar\n';
    const [truck, limit] = onlyN(
      readMarked(
        job(
          `    road-test tipper, 5 km\n    adjust relief\n    clean hub, hub-bolt\n    set selector park\n${fleet}`,
        ),
      ).files,
    );
    expect(truck?.fixes.map((fix) => fix.title)).toEqual(['Write `vehicle`']);
    expect(limit?.advice).toBe('what is set is declared under `adjustments`, with `limit relief` below it');
  });

  test('a built-in under a name that a catalogue uses too', () => {
    checkMarked(
      job(`    clean hub
    run engine, 5 min
    set selector park

places
  engine: Engine
`),
      onlyN,
    );
  });

  test('clauses of another kind of entry, and a figure without its word', () => {
    const found = checkMarked(
      `catalogue: Hub

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5
    115 N·m
#   ^^^^^^^ N205
    behind hub

parts
  hub: Hub
    grade 8
#   ^^^^^ N205
`,
      onlyN,
    );
    expect(found[0]?.fixes[0]?.title).toBe('Write `torque` before it');
  });

  test('a number alone is how many there are', () => {
    const text = (count: string) => `procedure A-1: Pipe, seal

parts
  ring: Ring
    ${count}

removal
  step: Take it off
    inspect ring
      reject: cracks
      if rejected
        stop: Tag it.
`;
    const found = checkMarked(
      text('2\n#   ^ N205 `ring` is a part, which has no figure of its own'),
      findingsOf,
    );
    const files = afterFix(readMarked(text('2')).files, found[0]?.fixes[0]?.edits ?? []);
    expect([...files.values()]).toEqual([text('count 2')]);
    expect(findingsOf(files)).toEqual([]);
    // A unit of several readings is asked about where none of them is meant, not as well.
    const heavy = checkMarked(text('28 lb\n#   ^^^^^ N205'), findingsOf);
    const weighed = afterFix(readMarked(text('28 lb')).files, heavy[0]?.fixes[0]?.edits ?? []);
    expect([...weighed.values()]).toEqual([text('mass 28 lb')]);
    expect(findingsOf(weighed)).toEqual([]);
  });

  test('positions of a part are its own words', () => {
    checkMarked(
      `procedure A-1: Axle, move

parts
  axle: Axle
    positions seated, pushed-in

removal
  step: Move
    move axle to pushed-in
    move axle to pushed-out
#                ^^^^^^^^^^ N206 has no value
    move axle to seated
`,
      onlyN,
    );
  });
});

test('sides that the procedure is not worked on', () => {
  checkMarked(
    `procedure A-1: Mirror, look at

sides left, right

places
  mirror: Mirror

inspection
  operation look: Look at it
    step: Look
      clean mirror
  perform look, side left
  perform look, side rear
#                    ^^^^ N206 no value
`,
    onlyN,
  );
});

describe('other files', () => {
  test('not found, out of the library, and nothing that follows from it', () => {
    const found = checkMarked(
      `--- file: procedures/a.bay
procedure A-1: Hub, look at

use "../catalog/van.bay"
#   ^^^^^^^^^^^^^^^^^^^^ N301 there is no file catalog/van.bay
use "../../other.bay"
#   ^^^^^^^^^^^^^^^^^ N303

applies to maristow-300

inspection
  step: Look
    clean bore
--- file: catalogue/van.bay
catalogue: Van

places
  bore: Bore
`,
      onlyN,
    );
    expect(found[0]?.fixes[0]?.title).toBe('Use "../catalogue/van.bay"');
  });

  test('operations of other procedures', () => {
    checkMarked(
      `--- file: a.bay
procedure A-1: Mirror, look at

inspection
  perform look from B-1
  perform lookk from B-1
#         ^^^^^ N304 B-1 has no operation
  perform look from B-2
#                   ^^^ N304 there is no procedure B-2
--- file: b.bay
procedure B-1: Mirror, clean

places
  mirror: Mirror

inspection
  operation look: Look at it
    step: Look
      clean mirror
`,
      onlyN,
    );
  });

  test('a reference needs its thing and its figure', () => {
    checkMarked(
      job(`    torque hub-bolt: To {hub-bolt torque}, not {hub-bolt tork}.
#                                                        ^^^^ N309
    clean hub: See {hubb}.
#                   ^^^^ N308
    set selector park
`),
      onlyN,
    );
  });
});

test('a name that nothing declares is a question in a draft, an error where it is a slip or the draft is over', () => {
  const severity = (status: string, verb: string): string | undefined =>
    findingsOf(
      new Map([
        [
          'a.bay',
          `procedure A-1: Mirror, replace
${status}parts
  mirror: Door mirror

removal
  step: Take the mirror off
    inspect mirror
    ${verb}
`,
        ],
      ]),
    ).find((f) => f.code === 'N101')?.severity;
  expect(severity('', 'inspect bracket')).toBe('question');
  expect(severity('status draft\n', 'inspect bracket')).toBe('question');
  expect(severity('status proved by KM on 2026-10-05\n', 'inspect bracket')).toBe('error');
  expect(severity('', 'inspect mirrror')).toBe('error');
});

describe('a figure with a word that its verb does not take', () => {
  test.each([
    ['    wait for 10 min', '    wait 10 min'],
    ['    run engine, for 5 min', '    run engine, 5 min'],
    [
      '    set selector neutral\n    torque hub-bolt to 115 N·m',
      '    set selector neutral\n    torque hub-bolt, 115 N·m',
    ],
  ])('%s', (line, mended) => {
    const found = findingsOf(new Map([['a.bay', job(`${line}\n`)]])).filter(({ code }) =>
      /^N20[34]/.test(code),
    );
    expect(found.map(({ code }) => code)).toEqual(['N203']);
    const [fix] = found[0]?.fixes ?? [];
    expect(fix && afterFix(new Map([['a.bay', job(`${line}\n`)]]), fix.edits).get('a.bay')).toBe(
      job(`${mended}\n`),
    );
  });
});

test('a count above the set is one fault', () => {
  const found = findingsOf(new Map([['a.bay', job('    remove 5 of hub-bolt, hub\n')]]));
  expect(found.map(({ code }) => code)).toContain('F212');
  expect(found.filter(({ code }) => code === 'S101')).toEqual([]);
});

test('what a verb has put on is taken off by the verb that undoes it, not declared', () => {
  const job = (last: string) => `procedure A-1: Wheel, look at

places
  rear-wheels: Rear wheels

preparation
  step: Secure
    chock rear-wheels
    ${last}
`;
  const [found] = findingsOf(new Map([['a.bay', job('remove chocks')]])).filter(
    ({ code }) => code === 'N101',
  );
  expect(found?.advice).toBe('did you mean `unchock rear-wheels`?');
  const files = afterFix(new Map([['a.bay', job('remove chocks')]]), found?.fixes[0]?.edits ?? []);
  expect([...files.values()]).toEqual([job('unchock rear-wheels')]);
  expect(found?.fixes.some(({ preferred }) => preferred)).toBe(false);
});

test('what is taken off by the verb that undoes another is not declared while that line cannot be read', () => {
  const found = findingsOf(
    new Map([
      [
        'a.bay',
        `procedure A-1: Shaft, look at

preparation
  step: Secure
    chock rear wheels
    clean shelf
    remove chocks
`,
      ],
    ]),
  );
  expect(found.map(({ code, message }) => `${code} ${/`[^`]*`/.exec(message)?.[0]}`)).toEqual([
    'G203 `wheels`',
    'N101 `shelf`',
  ]);
  const declared = found.flatMap(({ fixes }) => fixes.flatMap(({ edits }) => edits.map(({ text }) => text)));
  expect(declared.filter((text) => /chocks:/.test(text))).toEqual([]);
});

test('a verb that is of other things is one finding, with verbs that change what is named', () => {
  const found = findingsOf(
    new Map([
      [
        'a.bay',
        `procedure A-1: Axle, let down

parts
  axle-pad: Axle pad

removal
  step: Down
    lower axle-pad by 3 in
`,
      ],
    ]),
  );
  expect(found.map(({ code }) => code)).toEqual(['N201']);
  expect(found[0]?.advice).toMatch(/`move`/);
  expect(found[0]?.advice).toMatch(/`remove`/);
});

test('a verb with a word behind it that is read as a clause is asked about as what it is said for', () => {
  const job = (line: string) => `procedure A-1: Lead, connect

connections
  lead: Lead

installation
  step: On
    ${line}
`;
  const [found] = findingsOf(new Map([['a.bay', job('plug in lead')]])).filter(({ code }) => code === 'N208');
  expect(found?.advice).toBe('did you mean `connect lead`?');
  const files = afterFix(new Map([['a.bay', job('plug in lead')]]), found?.fixes[0]?.edits ?? []);
  expect([...files.values()]).toEqual([job('connect lead')]);
});

test('a clause that the verb does not take is told of before the name in it, and can be text', () => {
  const text = job(
    '    remove hub-bolt, hub on bench\n#                        ^^ N203 `remove` takes no `on`\n',
  );
  const [found, ...others] = checkMarked(text, onlyN);
  expect(others).toEqual([]);
  expect(found?.fixes.map((fix) => fix.title)).toEqual(['Make it text']);
  const { files } = readMarked(text);
  expect([...afterFix(files, found?.fixes[0]?.edits ?? []).values()].join()).toContain(
    '    remove hub-bolt, hub: On bench.\n',
  );
});

test.each([
  ['apply selector-brake', 'set selector-brake applied'],
  ['release handbrake', 'set handbrake released'],
  ['apply brake, 10 times', 'pump brake-pedal, 10 times'],
])('%s means %s', (said, meant) => {
  const files = new Map([['main.bay', job(`    ${said}\n`)]]);
  const [found] = onlyN(files).filter(({ code }) => code === 'N101');
  expect([...afterFix(files, found?.fixes[0]?.edits ?? []).values()].join()).toContain(`    ${meant}\n`);
});

test('what is applied or released is set to that, and what is disconnected is a connection', () => {
  const things = 'parts\n  cable: Cable\n\nconditions\n  park-brake: Parking brake\n    released, applied\n';
  const of = (line: string) =>
    findingsOf(new Map([['a.bay', `procedure A-1: T\n\n${things}\nremoval\n  step: S\n    ${line}\n`]])).find(
      ({ code }) => code === 'N201',
    );
  expect(of('apply park-brake')?.fixes[0]?.title).toBe('Write `set park-brake applied`');
  expect(of('release park-brake')?.fixes[0]?.title).toBe('Write `set park-brake released`');
  expect(of('disconnect cable')?.advice).toBe(
    'what is joined is declared under `connections`, with `on cable` below it',
  );
});

test('chocks that are removed are those that an undeclared place has', () => {
  const text = 'procedure A-1: T\n\nremoval\n  step: S\n    chock front-wheels\n    remove chocks\n';
  const found = findingsOf(new Map([['a.bay', text]])).find(({ message }) => message.includes('chocks'));
  expect(found?.advice).toBe('did you mean `unchock front-wheels`?');
});

test('how an engine runs is text where the clause takes a figure', () => {
  const files = new Map([['main.bay', job('    run engine, 2 min at idle\n')]]);
  const found = onlyN(files).find(({ code }) => code === 'N213');
  expect([...afterFix(files, found?.fixes[0]?.edits ?? []).values()].join()).toContain(
    '    run engine, 2 min: At idle.\n',
  );
});

test('the pin of a nut is named at the part that the nut holds', () => {
  const text =
    'catalogue: C\n\nfasteners\n  axle-nut: Nut\n    1 of M20x1.5\n    held by pin\n  pin: Pin\n    1 of cotter\n';
  const found = findingsOf(new Map([['a.bay', text]])).find(({ code }) => code === 'N205');
  expect(found?.advice).toBe('what locks it is named at the part that it holds: `held by axle-nut, pin`');
});
