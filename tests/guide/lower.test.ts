// From procedures to guides, by small examples.
import { LANGUAGES, VERBS } from '@baywright/language';
import { describe, expect, it } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import { plain } from '../../compiler/src/document/inline.js';
import { HEAD, lower, spaced, torques, WHEEL, ways } from './lower-helper.js';

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

  it('asks for what is not known in the unit of the shop, spelled out as figures are', () => {
    const open = (torque: string) => `${HEAD}
fasteners
  plug: Plug
    1 of M18x1.5, hex 21 mm
    torque ${torque}

installation
  step: Close
    torque plug
`;
    const of = (torque: string, units?: 'US first') =>
      torques(lower(open(torque), units ? { units } : {}))[0]?.replace(/^.*: /, '');
    expect(of('? ft-lb')).toBe('? FOOT-pounds');
    expect(of('? in-lb')).toBe('? INCH-pounds');
    expect(of('?', 'US first')).toBe('? FOOT-pounds');
    expect(of('? N·m', 'US first')).toBe('? FOOT-pounds');
    expect(of('? in-lb', 'US first')).toBe('? INCH-pounds');
  });

  it('is checked again at the last torque of its stages, never turned by its angle', () => {
    const again = (stages: string) => `${HEAD}
fasteners
  bolt: Bolts
    2 of M12x1.75, class 10.9, hex 18 mm
    torque ${stages}

completion
  step: Later
    recheck bolt, after 50 km
`;
    expect(torques(lower(again('30 N·m then 60 N·m')))).toEqual(['2 × hex 18 mm: 60 N·m (44.3 FOOT-pounds)']);
    expect(torques(lower(again('30 N·m then 55 N·m then 90°')))).toEqual([
      '2 × hex 18 mm: 55 N·m (40.6 FOOT-pounds)',
    ]);
  });

  it('names a threadlocker of the shop once, where it is said and where it is pulled', () => {
    const locked = `${HEAD}
fasteners
  bolt: Bolts
    2 of M12x1.75, class 10.9, hex 18 mm
    torque 90 N·m, threadlocker blue

supplies
  blue: Threadlocker, medium
    number "TL-2"

installation
  step: On
    apply blue to bolt
    install bolt
    torque bolt
`;
    const guide = lower(locked);
    expect(torques(guide)[0]).toMatch(/; Threadlocker, medium$/);
    const pulled = guide.block('needs').groups.flatMap(({ rows }) => rows.map(({ what }) => plain(what)));
    expect(pulled.filter((words) => words.startsWith('Threadlocker'))).toEqual([
      'Threadlocker, medium, TL-2',
    ]);
  });

  it('says over the figure which vehicles it is for', () => {
    const staged = `${HEAD}
fasteners
  bolt: Bolts
    2 of M12x1.75, class 10.9, hex 18 mm
    torque 30 N·m then 60 N·m
    torque 40 N·m then 70 N·m, when axle heavy

installation
  step: On
    torque bolt
`;
    expect(torques(lower(staged))).toEqual([
      '2 × hex 18 mm: Axle light, first 30 N·m (22.1 FOOT-pounds), then 60 N·m (44.3 FOOT-pounds)',
      '2 × hex 18 mm: Axle heavy, first 40 N·m (29.5 FOOT-pounds), then 70 N·m (51.6 FOOT-pounds)',
    ]);
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
      '2 × hex 18 mm: first 55 N·m (40.6 FOOT-pounds)',
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

  it('tell in the record what is rejected from what is expected', () => {
    const text = `${HEAD}
inspection
  step: Look
    inspect wheel
      reject: cracks
    test wheel
      expect: It runs true.
`;
    const limits = lower(text)
      .block('record-readings')
      .rows.map(({ limit }) => plain(limit));
    expect(limits).toEqual(['Reject: cracks', 'Expect: It runs true.']);
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
    const variants = [...walkBlocks(lower(text).document.blocks)].flatMap((block) =>
      block.kind === 'row' ? [block.variant] : [],
    );
    expect(variants).toEqual(['axle heavy', 'axle light', 'axle light']);
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
    ['Good: go on', 'Reject: stop, tell the shop lead'],
  ]);
});

it('asks whether a level is at its mark, and for the top-up only where it is not', () => {
  const text = `${HEAD}
completion
  step: End
    check-level axle-oil
      if below limit
        top-up axle-oil
    check-level axle-oil
`;
  const job = lower(text);
  expect(ways(job)).toEqual([['At the mark: go on', 'Below the mark: go to 1.2']]);
  const rows = [...walkBlocks(job.document.blocks)].flatMap((block) => (block.kind === 'row' ? [block] : []));
  expect(rows[1]?.depends).toEqual({ row: 'r1-1', result: 'bad' });
  expect(job.block('record-readings').rows.map(({ what }) => what)).toEqual(['Axle oil, level']);
});

it('has one full stop before the mark of a missing translation', () => {
  const text = `${HEAD}\ninspection\n  step: Look\n    hold: Somebody looks.\n    do: Wipe it\n`;
  expect(
    lower(text, { language: 'fr' })
      .lines.slice(1)
      .map((line) => line.split(' {')[0]),
  ).toEqual(['1.1 Somebody looks. [en]', '1.2 Wipe it [en].']);
});

it('closes what a comma adds to a title where the sentence goes on', () => {
  const text = `${HEAD}sides left, right

parts
  caps: Hub caps, top and bottom
    count 2

limits
  pressure: Tyre pressure, cold
    at least 400 kPa

tools
  gauge: Gauge

removal
  step: Off
    measure pressure with gauge
    remove caps with gauge
    remove caps
`;
  expect(
    lower(text)
      .lines.slice(1, 4)
      .map((line) => line.split(' {')[0]),
  ).toEqual([
    '1.1 Measure the tyre pressure, cold, with the gauge.',
    '1.2 Remove the hub caps, top and bottom (2, left), with the gauge.',
    '1.3 Remove the hub caps, top and bottom (2, left).',
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
    'Film at 2 s: The key pushes the clip aside.',
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
