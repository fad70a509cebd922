// From procedures to guides, by small examples.
import { LANGUAGES, VERBS } from '@baywright/language';
import { describe, expect, it } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import { plain } from '../../compiler/src/document/inline.js';
import { lower, spaced, torques, ways } from './lower-helper.js';

const HEAD = `procedure T-1: Wheel, change

use "catalogue.bay"

applies to van
`;
const WHEEL = `${HEAD}
preparation
  step: Raise
    chock wheels-behind
    loosen wheel-nut, 1/2 turn
    raise vehicle with jack at sills

removal
  step: Take it off
    remove wheel-nut, wheel

installation
  step: Put it on
    install wheel, wheel-nut
    snug wheel-nut
    lower vehicle
    torque wheel-nut
`;

describe('rows', () => {
  it('print one action a line and count what is off', () => {
    expect(lower(WHEEL).lines).toEqual([
      '# 1 Raise',
      '1.1 Chock the rear wheels. {0 off, 0 to torque}',
      '1.2 Loosen the wheel nuts (5) by 1/2 turn. {0 off, 1 to torque}',
      '1.3 Raise the vehicle at the sill lifting points with the trolley jack. {0 off, 1 to torque}',
      '# 2 Take it off',
      '2.1 Remove the wheel nuts (5). {1 off, 0 to torque}',
      '2.2 Remove the road wheel. {2 off, 0 to torque}',
      'Off now, 2: wheel nuts (5) and road wheel.',
      '# 3 Put it on',
      '3.1 Install the road wheel. {1 off, 0 to torque}',
      '3.2 Install the wheel nuts (5), by hand. {0 off, 1 to torque}',
      '3.3 Snug the wheel nuts (5), not to final torque. {0 off, 1 to torque}',
      '3.4 Lower the vehicle. {0 off, 1 to torque}',
      '3.5 Torque the wheel nuts (5). {0 off, 0 to torque}',
    ]);
  });

  it('name what a row changes, so that the page can count by itself', () => {
    const { document } = lower(WHEEL);
    const changes = [...walkBlocks(document.blocks)].flatMap((block) =>
      block.kind === 'row' ? block.changes : [],
    );
    expect(changes).toEqual([
      { thing: 'wheel-nut', to: 'loose' },
      { thing: 'wheel-nut', to: 'off' },
      { thing: 'wheel', to: 'off' },
      { thing: 'wheel', to: 'done' },
      { thing: 'wheel-nut', to: 'loose' },
      { thing: 'wheel-nut', to: 'done' },
    ]);
    expect(Object.values(document.things).map(spaced)).toEqual(['wheel nuts (5)', 'road wheel']);
  });

  it('keep a line that cannot be read as it was written', () => {
    expect(lower(`${HEAD}\nremoval\n  step: Take it off\n    frobnicate wheel\n`).lines).toContain(
      '1.1 frobnicate wheel. {0 off, 0 to torque}',
    );
  });
});

describe('torque', () => {
  it('stands at its own row with what must hold, for each vehicle', () => {
    expect(torques(lower(WHEEL))).toEqual([
      '5 × hex 21 mm: axle light 160 N·m (118.0 FOOT-pounds), axle heavy 180 N·m (132.8 FOOT-pounds); On its wheels; Order: star',
    ]);
  });

  it('is that of the option that is printed', () => {
    expect(torques(lower(WHEEL, { option: { axle: 'heavy' } }))).toEqual([
      '5 × hex 21 mm: 180 N·m (132.8 FOOT-pounds); On its wheels; Order: star',
    ]);
  });

  it('has the unit first that the shop wants', () => {
    expect(torques(lower(WHEEL, { option: { axle: 'light' }, units: 'US first' }))[0]).toContain(
      '118.0 FOOT-pounds (160 N·m)',
    );
  });

  it('leaves a blank for what is not known', () => {
    const open = `${HEAD}
fasteners
  plug: Plug
    1 of M18x1.5, hex ?
    torque ?

installation
  step: Close
    torque plug
`;
    expect(torques(lower(open))).toEqual(['1 × hex ?: ? N·m']);
    expect(lower(open).document.identity.statusText).toMatch(/^Draft: \d+ questions open$/);
  });

  it('prints only the stages that are left', () => {
    const staged = `${HEAD}
fasteners
  bolt: Bolts
    2 of M12x1.75, class 10.9, hex 18 mm
    torque 55 N·m then 90°

removal
  step: Off
    remove bolt
installation
  step: On
    install bolt
    torque bolt, stage 1
    torque bolt
`;
    expect(torques(lower(staged))).toEqual([
      '2 × hex 18 mm: 55 N·m (40.6 FOOT-pounds)',
      '2 × hex 18 mm: then 90°',
    ]);
  });
});

describe('ways round', () => {
  const measured = `${HEAD}
limits
  depth: Tread depth
    at least 3.0 mm, new 8.0 mm, per "T-1"

inspection
  step: Look
    measure depth
      if below limit
        renew wheel: Both on the axle.
      otherwise
        note: Write it down.
    inspect wheel
      reject: cuts
      if rejected
        stop: Tag the van.
`;

  it('say the condition first, with the line it asks about', () => {
    expect(lower(measured).lines).toEqual([
      '# 1 Look',
      '1.1 Measure the tread depth. {0 off, 0 to torque}',
      '1.2 If 1.1 is below 3.0 mm: Renew the road wheel. {0 off, 0 to torque}',
      '> Otherwise:',
      'Write it down.',
      '1.3 Inspect the road wheel. {0 off, 0 to torque}',
      '1.4 STOP If 1.3 is rejected: Tag the van.',
    ]);
  });

  it('give the reading its limit in both systems and say where to go', () => {
    const reading = lower(measured).block('row').beside[0];
    expect(reading).toMatchObject({
      kind: 'reading',
      low: '3.0',
      units: [
        { label: 'mm', times: ['1', '1'] },
        { label: 'in', times: ['127', '5'] },
      ],
    });
    expect(reading?.kind === 'reading' && plain(reading.limit)).toBe('at least 3.0 mm');
    // What is good leads past the renewing, to what is otherwise told.
    expect(ways(lower(measured))).toEqual([
      ['Within limit: as noted below', 'Below limit: go to 1.2'],
      ['Good: go on', 'Reject: go to 1.4'],
    ]);
  });

  const between = (under: string) => `${HEAD}
limits
  depth: Tread depth
    3.0 to 8.0 mm, per "T-1"

inspection
  step: Look
    measure depth
${under}
`;
  it.each([
    [
      'below alone',
      '      if below limit\n        stop: Tag it.\n',
      ['Within limit: go on', 'Below limit: go to 1.2', 'Above limit: stop, tell the shop lead'],
    ],
    [
      'each its own',
      '      if below limit\n        stop: Tag it.\n      if above limit\n        note: It is the wrong tyre.\n',
      ['Within limit: go on', 'Below limit: go to 1.2', 'Above limit: as noted below'],
    ],
    [
      'both ways',
      '      if outside limit\n        renew wheel\n',
      ['Within limit: go on', 'Beyond limit: go to 1.2'],
    ],
    ['nothing', '', ['Within limit: go on', 'Beyond limit: stop, tell the shop lead']],
    [
      'later in the step',
      '    clean sills\n    if depth below limit\n      renew wheel\n',
      ['Within limit: go on', 'Below limit: go to 1.3', 'Above limit: stop, tell the shop lead'],
    ],
  ])('say where each end of a limit leads: %s', (_name, under, expected) => {
    expect(ways(lower(between(under)))[0]).toEqual(expected);
  });

  it('hang on the end of the limit that they ask about', () => {
    const { document } = lower(between('      if above limit\n        renew wheel\n'));
    const depends = [...walkBlocks(document.blocks)].flatMap((block) =>
      block.kind === 'row' && block.depends ? [block.depends] : [],
    );
    expect(depends).toEqual([{ row: 'r1-1', result: 'high' }]);
  });

  it('say what is told on rejection, and not to stop as well', () => {
    const text = `${HEAD}
inspection
  step: Look
    inspect wheel
      reject: cuts
      if rejected: Mark the place with chalk.
`;
    expect(ways(lower(text))).toEqual([['Good: go on', 'Reject: as noted below']]);
    expect(lower(text).lines).toContain('> If 1.1 is rejected: Mark the place with chalk.');
  });

  it('give a blank for each place a reading is taken at', () => {
    const text = between('').replace('measure depth', 'measure depth, at 6 places');
    expect(lower(text).block('row').beside[0]).toMatchObject({ kind: 'reading', places: 6 });
    expect(lower(text).block('record-readings').rows).toMatchObject([{ number: '1.1', places: 6 }]);
  });

  it('print for all options what only some have, and drop it for a chosen one', () => {
    const text = `${HEAD}
inspection
  step: Look
    inspect wheel, when axle heavy
    when axle light
      clean sills
      inspect sills
`;
    expect(lower(text).lines).toEqual([
      '# 1 Look',
      '1.1 Only with axle heavy: Inspect the road wheel. {0 off, 0 to torque}',
      '> Only with axle light:',
      '1.2 Clean the sill lifting points. {0 off, 0 to torque}',
      '1.3 Inspect the sill lifting points. {0 off, 0 to torque}',
    ]);
    expect(lower(text, { option: { axle: 'heavy' } }).lines).toEqual([
      '# 1 Look',
      '1.1 Inspect the road wheel. {0 off, 0 to torque}',
    ]);
  });
});

it('judges whatever has a criterion below it, whatever the verb', () => {
  const text = `${HEAD}
inspection
  step: Look
    inspect wheel-nut
      reject: rust
      if rejected
        stop: Call the shop lead.
    scan vehicle
      expect: No code.
    clean sills
`;
  expect(ways(lower(text))).toEqual([
    ['Good: go on', 'Reject: go to 1.2'],
    ['Good: go on', 'Reject: stop'],
  ]);
});

it('says how many plugs and parts one entry stands for, and pulls as many', () => {
  const text = `${HEAD}
parts
  coil: Ignition coils
    count 3
    renew

connections
  plug: Coil plugs
    count 6, on coil

removal
  step: Off
    disconnect plug
    remove coil
installation
  step: On
    install coil
    connect plug
`;
  const job = lower(text);
  expect(job.lines).toContain('1.1 Disconnect the coil plugs (6). {1 off, 0 to torque}');
  expect(job.lines).toContain('2.1 Install the new ignition coils (3). {1 off, 0 to torque}');
  expect(needsOf(job)).toContain('Parts to renew: Ignition coils, 3 | 2.1');
});

describe('sides', () => {
  const sided = `${HEAD}sides left, right

preparation
  step: Safe
    chock wheels-behind
removal
  step: Off
    remove wheel-nut, wheel
installation
  step: On
    install wheel, wheel-nut
completion
  step: Done
    lower vehicle
    torque wheel-nut
    unchock wheels-behind
`;

  it('print one side as any other job', () => {
    expect(lower(sided, { side: 'left' }).lines).not.toContain('(left)');
    expect(lower(sided, { side: 'left' }).document.identity).toMatchObject({
      side: 'Left side',
      print: 'left-en',
    });
  });

  it('print both with the common work once, each in an order that can be done', () => {
    expect(lower(sided).lines).toEqual([
      '# 1 Safe',
      '1.1 Chock the rear wheels. {0 off, 0 to torque}',
      '# 2 Off, left',
      '2.1 Remove the wheel nuts (5, left). {1 off, 0 to torque}',
      '2.2 Remove the road wheel (left). {2 off, 0 to torque}',
      'Off now, 2: wheel nuts (5, left) and road wheel (left).',
      '# 3 On, left',
      '3.1 Install the road wheel (left). {1 off, 0 to torque}',
      '3.2 Install the wheel nuts (5, left), by hand. {0 off, 1 to torque}',
      '# 4 Off, right',
      '4.1 Remove the wheel nuts (5, right). {1 off, 1 to torque}',
      '4.2 Remove the road wheel (right). {2 off, 1 to torque}',
      'Off now, 2: wheel nuts (5, right) and road wheel (right). To torque, 1: wheel nuts (5, left).',
      '# 5 On, right',
      '5.1 Install the road wheel (right). {1 off, 1 to torque}',
      '5.2 Install the wheel nuts (5, right), by hand. {0 off, 2 to torque}',
      '# 6 Done',
      '6.1 Lower the vehicle. {0 off, 2 to torque}',
      '6.2 Torque the wheel nuts (5, left). {0 off, 1 to torque}',
      '6.3 Torque the wheel nuts (5, right). {0 off, 0 to torque}',
      '6.4 Take the chocks away from the rear wheels. {0 off, 0 to torque}',
    ]);
  });

  const joint = (work: string) => `${HEAD}sides left, right

parts
  cover: Axle cover
    held by cover-bolt
    sealed with paste on face

fasteners
  cover-bolt: Cover bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m

supplies
  paste: Sealing paste
    sealant
    amount 5 mL
    fit within 10 min
    fill after 2 h
  lube: Pin grease
    grease

temporary
  sheet: Sheet over the opening
    behind cover

places
  face: Cover face

installation
  step: Close
    ${work.split('; ').join('\n    ')}
`;

  it('put the sealant on each face just before its own cover, with what covers each opening', () => {
    const { lines, document } = lower(
      joint('place sheet; remove sheet; apply paste to face; install cover, cover-bolt; wait 5 min'),
    );
    expect(lines.filter((line) => !line.startsWith('[')).map((line) => line.split(' {')[0])).toEqual([
      '# 1 Close, left',
      '1.1 Place the sheet over the opening.',
      '1.2 Remove the sheet over the opening.',
      '1.3 Apply sealing paste to the cover face.',
      '1.4 Install the axle cover (left).',
      '1.5 Install the cover bolts (4, left), by hand.',
      '1.6 Wait 5 min.',
      '# 2 Close, right',
      '2.1 Place the sheet over the opening.',
      '2.2 Remove the sheet over the opening.',
      '2.3 Apply sealing paste to the cover face.',
      '2.4 Install the axle cover (right).',
      '2.5 Install the cover bolts (4, right), by hand.',
      '2.6 Wait 5 min.',
    ]);
    // Nothing is filled here, so nothing waits for it.
    const clocks = [...walkBlocks(document.blocks)].flatMap((block) =>
      block.kind === 'row' ? block.beside.flatMap((box) => (box.kind === 'clock' ? [box.id] : [])) : [],
    );
    expect(clocks).toEqual(['fit-within-r1-3', 'wait-r1-6', 'fit-within-r2-3', 'wait-r2-6']);
  });

  it('wait once where both sides have come to it', () => {
    const { lines } = lower(joint('torque cover-bolt; wait 5 min; chock wheels-behind'));
    expect(lines).toEqual([
      '# 1 Close',
      '1.1 Torque the cover bolts (4, left). {0 off, 0 to torque}',
      '1.2 Torque the cover bolts (4, right). {0 off, 0 to torque}',
      '1.3 Wait 5 min. {0 off, 0 to torque}',
      '1.4 Chock the rear wheels. {0 off, 0 to torque}',
    ]);
  });

  it('add up what both take, declared or said', () => {
    const supplies = (work: string, choice = {}) =>
      needsOf(lower(joint(work), choice)).filter((line) => line.startsWith('Supplies'));
    expect(supplies('apply paste to face; install cover')).toEqual([
      'Supplies: Sealing paste, 10 mL (0.34 US fl oz) | 1.1, 2.1',
    ]);
    expect(supplies('apply paste to face; install cover', { side: 'left' })).toEqual([
      'Supplies: Sealing paste, 5 mL (0.17 US fl oz) | 1.1',
    ]);
    expect(supplies('apply lube, 60 g, to face; install cover')).toEqual([
      'Supplies: Pin grease, 120 g (4.23 oz) | 1.1, 2.1',
    ]);
    expect(supplies('chock wheels-behind; apply paste to sills; chock wheels-behind')).toEqual([
      'Supplies: Sealing paste, 5 mL (0.17 US fl oz) | 1.2',
    ]);
  });

  it('come back for both in one line, and the record of this visit does not wait for it', () => {
    const { lines, document } = lower(joint('torque cover-bolt; recheck cover-bolt, after 50 km'));
    expect(lines.at(-1)).toBe(
      '1.3 Recheck the cover bolts (8, left and right) after 50 km (31.1 mi). {0 off, 0 to torque}',
    );
    const rows = [...walkBlocks(document.blocks)].flatMap((block) => (block.kind === 'row' ? [block] : []));
    expect(rows.map(({ isLater }) => isLater ?? false)).toEqual([false, false, true]);
    const record = lower(joint('torque cover-bolt; recheck cover-bolt, after 50 km')).block('record-torques');
    expect(record.rows.map(({ joint: name, count }) => [name, count])).toEqual([
      ['Cover bolts, left', 4],
      ['Cover bolts, right', 4],
      ['Cover bolts, recheck', 8],
    ]);
  });
});

const needsOf = (job: ReturnType<typeof lower>) =>
  job
    .block('needs')
    .groups.flatMap(({ title, rows }) =>
      rows.map((row) => spaced(`${title}: ${plain(row.what)} | ${plain(row.for)}`)),
    );

it('asks for no more of a fluid than a top-up takes', () => {
  const text = `${HEAD}
fluids
  brake-fluid: Brake fluid
    fill 0.9 L

completion
  step: End
    top-up brake-fluid
`;
  expect(needsOf(lower(text))).toEqual(['Fluids: Brake fluid | 1.1']);
  expect(needsOf(lower(text.replace('top-up', 'fill')))).toEqual([
    'Fluids: Brake fluid, 0.9 L (0.95 US qt) | 1.1',
  ]);
});

it('has a blank in the record for what is weighed or written down', () => {
  const { document } = lower(
    `${HEAD}\ncompletion\n  step: End\n    weigh axle-oil\n    record odometer, codes, axle-oil\n`,
  );
  const labels = [...walkBlocks(document.blocks)].flatMap((block) =>
    block.kind === 'fields' ? block.fields.map(({ label }) => plain(label)) : [],
  );
  expect(labels).toEqual(expect.arrayContaining(['Axle oil', 'Trouble codes']));
  expect(labels.filter((label) => label === 'Axle oil')).toHaveLength(1);
});

it('says nothing of wrenches where the house has no list of them', () => {
  const bare = `procedure T-1: Plug, tighten

fasteners
  plug: Plug
    1 of M18x1.5, hex 19 mm
    torque 30 N·m

installation
  step: Close
    install plug
    torque plug
`;
  expect(needsOf(lower(bare))).toEqual(['Sockets and wrenches: Hex 19 mm, 3/8 in drive | Plug']);
  const small = `${bare}\ntools\n  small: Small torque wrench\n    torque 2 to 10 N·m\n`;
  expect(needsOf(lower(small))).toContain('Torque wrenches: No wrench of the house list suits | 30 N·m');
});

it('asks for a drive that turns the socket as well as the torque', () => {
  const text = WHEEL.replace(
    'applies to van',
    `applies to van

fasteners
  hub-nut: Hub nut
    1 of M24x1.5, hex 36 mm
    torque 50 N·m
`,
  ).replace('    torque wheel-nut\n', '    torque wheel-nut\n    torque hub-nut\n');
  expect(needsOf(lower(text))[0]).toBe(
    'Sockets and wrenches: Hex 21, 36 mm, 1/2 in drive | Wheel nuts; hub nut',
  );
});

it('works out what the job needs', () => {
  expect(needsOf(lower(WHEEL))).toEqual([
    'Sockets and wrenches: Hex 21 mm, 1/2 in drive | Wheel nuts',
    'Torque wrenches: Large torque wrench, 60 to 300 N·m | 160, 180 N·m',
    'Tools: Trolley jack, 2000 kg | 1.3',
  ]);
});

it('brings in the lines of an operation that is performed', () => {
  const other = `procedure W-1: Wheel off

use "catalogue.bay"

applies to van

removal
  operation off: Wheel off
    step: Nuts and wheel
      remove wheel-nut, wheel
`;
  const { lines } = lower(`${HEAD}\nremoval\n  perform off from W-1\n`, { files: { 'other.bay': other } });
  expect(lines.slice(0, 4)).toEqual([
    '# 1 Nuts and wheel',
    'From W-1: Wheel off',
    '1.1 Remove the wheel nuts (5). {1 off, 0 to torque}',
    '1.2 Remove the road wheel. {2 off, 0 to torque}',
  ]);
});

it('says where a ban begins and where it ends', () => {
  const text = `${HEAD}
rules
  still: Nobody turns the wheel while it is loose.
    never turn wheel
    while wheel-nut loose

preparation
  step: Work
    loosen wheel-nut
    inspect wheel
    torque wheel-nut
`;
  const { lines, document } = lower(text);
  expect(lines.filter((line) => line.startsWith('['))).toEqual([
    '[start] Nobody turns the wheel while it is loose: until 1.3.',
    '[end] Nobody turns the wheel while it is loose.',
  ]);
  expect(document.bans).toMatchObject([{ fromRow: 'r1-1', untilRow: 'r1-3' }]);
});

it('has a film in the page where it is small enough, and its words in any case', () => {
  const text = `${HEAD}
removal
  step: Off
    clip "key.webm" at 2 s: The key pushes the clip aside.
    remove wheel-nut
      clip "far/long.mp4" at 1 min 5 s: How it comes off.
    remove wheel
`;
  const webm = Uint8Array.of(0x1a, 0x45, 0xdf, 0xa3, 1, 2, 3);
  const { lines, document } = lower(text, { bytes: { 'key.webm': webm, 'far/long.mp4': new Uint8Array(9) } });
  expect(lines).toEqual([
    '# 1 Off',
    'Film key.webm at 2 s: The key pushes the clip aside.',
    '1.1 Remove the wheel nuts (5). {1 off, 0 to torque}',
    'Film long.mp4 at 1 min 5 s: How it comes off.',
    '1.2 Remove the road wheel. {2 off, 0 to torque}',
    'Off now, 2: wheel nuts (5) and road wheel.',
  ]);
  const films = [...walkBlocks(document.blocks)].flatMap((block) =>
    block.kind === 'clip' ? [block.film] : [],
  );
  expect(films).toEqual([{ type: 'webm', data: webm, start: 2 }, undefined]);
});

it('fills references in text with the figure of the option that is printed', () => {
  const text = `${HEAD}\ncompletion\n  step: End\n    note: Wheel nuts get {wheel-nut torque}.\n`;
  expect(lower(text, { option: { axle: 'heavy' } }).lines).toContain(
    'Wheel nuts get 180 N·m (132.8 FOOT-pounds).',
  );
});

describe.each(LANGUAGES)('every verb says its sentence in %s', (language) => {
  it.each(VERBS.map((verb) => [verb.word, verb] as const))('%s', (_word, verb) => {
    const { lines, document } = lower(`${HEAD}\npreparation\n  step: S\n    ${verb.example}\n`, { language });
    const wear = [...walkBlocks(document.blocks)].some(({ kind }) => kind === 'wear');
    const row = lines.find((line) => line.startsWith('1.1 ')) ?? '';
    if (wear) return;
    // The words of the phrase that stand in no slot are in the sentence.
    const fixed = verb.phrase[language].replace(/\[[^\]]*\]/g, '\u0000').split(/\{[^}]*\}|\u0000/);
    for (const words of fixed)
      expect(row.toLowerCase().replaceAll('\u00a0', ' ')).toContain(
        words
          .trim()
          .toLowerCase()
          .replace(/^,\s*|,$/g, ''),
      );
  });
});

it('tells what is off at a line, since when and where it comes back', () => {
  const at = WHEEL.indexOf('  step: Put it on');
  const sheet = lower(WHEEL, { sheet: 'off-now', at }).block('off-now');
  expect(sheet.rail).toEqual({ off: 2, loose: 0 });
  const off = sheet.groups.find(({ title }) => title === 'Off the vehicle');
  expect(off?.rows.map(({ what, since, next }) => [plain(what), since, plain(next ?? [])])).toEqual([
    ['Wheel nuts, all 5', '2.1', '3.2'],
    ['Road wheel', '2.2', '3.1'],
  ]);
});

it('runs the clocks of a sealant from the row that starts them to the row that may follow', () => {
  const text = `${HEAD}
parts
  cover: Axle cover
    held by cover-bolt
    sealed with paste on face
    closes axle-oil

fasteners
  cover-bolt: Cover bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 25 N·m

supplies
  paste: Sealing paste
    sealant
    fit within 10 min
    fill after 2 h

places
  face: Cover face

installation
  step: Close
    remove cover-bolt, cover
    clean face
    apply paste to face
    clean sills
    install cover, cover-bolt
    torque cover-bolt
    wait 2 h
    when axle light
      fill axle-oil, 1 L
    when axle heavy
      fill axle-oil, 2 L
`;
  const { document, lines } = lower(text);
  expect(
    document.bans.map(({ text: told, fromRow, untilRow }) => [spaced(plain(told)), fromRow, untilRow]),
  ).toEqual([
    ['Close the joint within 10 min of 1.4: by 1.6.', 'r1-4', 'r1-6'],
    ['No filling until 2 h after 1.6: not before 1.10.', 'r1-6', 'r1-10'],
  ]);
  // The ban ends before the row that it forbade until then, not behind it.
  const end = lines.indexOf('[end] No filling until 2 h after 1.6.');
  expect(lines[end - 1]).toMatch(/^1\.9 /);
  expect(lines.slice(end + 1, end + 3)).toEqual([
    '> Only with axle light:',
    '1.10 Fill with axle oil, 1 L (1.1 US qt). {0 off, 0 to torque}',
  ]);
});

it('keeps a rule that begins again as one ban while nothing it forbids is done between', () => {
  const work = (between: string) => `${HEAD}
rules
  still: Nobody turns the wheel while it is loose.
    never turn wheel
    while wheel-nut loose

preparation
  step: Work
    loosen wheel-nut
    inspect wheel
    torque wheel-nut
    ${between}
    loosen wheel-nut
    inspect wheel
    torque wheel-nut
`;
  const spans = (between: string) =>
    lower(work(between)).document.bans.map(({ fromRow, untilRow }) => [fromRow, untilRow]);
  expect(spans('inspect wheel')).toEqual([['r1-1', 'r1-7']]);
  expect(spans('turn wheel')).toEqual([
    ['r1-1', 'r1-3'],
    ['r1-5', 'r1-7'],
  ]);
});
