// What a job needs, worked out from its lines.
import { expect, it } from 'vitest';
import { walkBlocks } from '../../compiler/src/document/blocks.js';
import { plain } from '../../compiler/src/document/inline.js';
import { HEAD, lower, needsOf, spaced, torques, WHEEL } from './lower-helper.js';

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

it('asks for the whole fill where a line puts in a part of it and the rest is topped up', () => {
  const text = `${HEAD}
fluids
  gearbox-fluid: Gearbox fluid
    fill 5.5 L, until level at mark
places
  mark: Mark

completion
  step: End
    fill gearbox-fluid, 4.5 L
    top-up gearbox-fluid until level at mark
`;
  expect(needsOf(lower(text))).toEqual(['Fluids: Gearbox fluid, 5.5 L (5.8 US qt) | 1.1, 1.2']);
});

it('has a blank in the record for what is weighed or written down', () => {
  const { document } = lower(
    `${HEAD}\ncompletion\n  step: End\n    weigh axle-oil\n    record odometer, codes, axle-oil\n`,
  );
  const labels = [...walkBlocks(document.blocks)].flatMap((block) =>
    block.kind === 'fields' ? block.fields.map(({ label }) => plain(label)) : [],
  );
  expect(labels).toEqual(expect.arrayContaining(['Axle oil, amount', 'Trouble codes']));
  expect(labels.filter((label) => label === 'Axle oil, amount')).toHaveLength(1);
});

it('has a blank in the record for each of two drives and two visits', () => {
  const { document } = lower(
    `${HEAD}\ncompletion\n  step: End\n    road-test vehicle, 10 km\n    recheck wheel-nut\n` +
      '    road-test vehicle, 5 km\n    recheck wheel-nut, after 50 km\n    recheck wheel-nut, after 500 km\n',
  );
  const fields = [...walkBlocks(document.blocks)].flatMap((block) =>
    block.kind === 'fields' ? block.fields : [],
  );
  expect(fields.map(({ label }) => spaced(plain(label)))).toEqual(
    expect.arrayContaining([
      'Road test, 10 km (6.2 mi)',
      'Road test, 5 km (3.1 mi)',
      'Wheel nuts, recheck',
      'Wheel nuts: recheck after 50 km (31.1 mi)',
      'Wheel nuts: recheck after 500 km (310.7 mi)',
    ]),
  );
  expect(new Set(fields.map(({ key }) => key)).size).toBe(fields.length);
});

it.each([
  [['1 11/16 in'], 'Hex 1 11/16 in'],
  [['15/16 in', '1 1/8 in', '1 5/16 in'], 'Hex 15/16, 1 1/8, 1 5/16 in'],
  [['18 mm', '1 1/8 in'], 'Hex 1 1/8 in, 18 mm'],
])('lists the sockets of heads of %j', (sizes, said) => {
  const nuts = sizes.map((hex, i) => `  nut-${i}: Nut ${i}\n    1 of M16x1.5, hex ${hex}\n`).join('');
  const names = sizes.map((_, i) => `nut-${i}`).join(', ');
  const text = `${HEAD}\nfasteners\n${nuts}\nremoval\n  step: Off\n    remove ${names}\n`;
  expect(needsOf(lower(text)).map((line) => line.replace(/^.*?: | \|.*$/g, ''))).toEqual([said]);
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

it('pulls a hose that is renewed', () => {
  const hose = `procedure T-1: Hose, renew

connections
  top-hose: Top hose
    number "CH-40"
    renew

removal
  step: Off
    disconnect top-hose

installation
  step: On
    connect top-hose
`;
  expect(needsOf(lower(hose)).join()).toContain('Top hose, CH-40');
});

it('asks for a key where the hexagon lies inside the head', () => {
  const inside = `procedure T-1: Plug, tighten

fasteners
  plug: Plug
    1 of M18x1.5, hex 8 mm
    torque 35 N·m

installation
  step: Close
    install plug
    torque plug
`;
  expect(needsOf(lower(inside))).toEqual(['Sockets and wrenches: Hex key 8 mm, 3/8 in drive | Plug']);
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

it('lists torque wrenches from the smallest range to the largest, as they lie in the drawer', () => {
  const text = WHEEL.replace(
    'applies to van',
    `applies to van

fasteners
  cover-screw: Cover screw
    1 of M6x1.0, hex 10 mm
    torque 8 N·m

tools
  small: Small torque wrench
    torque 2 to 25 N·m`,
  ).replace('    torque wheel-nut\n', '    torque wheel-nut\n    torque cover-screw\n');
  expect(needsOf(lower(text)).filter((row) => row.startsWith('Torque'))).toEqual([
    'Torque wrenches: Small torque wrench, 2 to 25 N·m | 8 N·m',
    'Torque wrenches: Large torque wrench, 60 to 300 N·m | 160, 180 N·m',
  ]);
  // No line parts the ends of a range.
  const groups = lower(text).block('needs').groups;
  expect(groups.flatMap(({ rows }) => rows.map(({ what }) => plain(what)))).toContain(
    'Small torque wrench, 2\u00a0to\u00a025\u00a0N·m',
  );
});

it('gives each tool and each thing that is placed a row to tick, with the lines it is for', () => {
  const text = WHEEL.replace(
    'applies to van',
    `applies to van

tools
  brush: Wire brush
  gauge: Dial gauge

temporary
  tray: Tray
  rag: Rag`,
  ).replace(
    'remove wheel-nut, wheel',
    `remove wheel-nut, wheel
    place rag
    place tray
    clean wheel with brush
    inspect wheel with gauge
      reject: cracks
    clean wheel with brush
    remove rag, tray`,
  );
  expect(needsOf(lower(text)).slice(2)).toEqual([
    'Tools: Trolley jack, 2000 kg | 1.3',
    'Tools: Wire brush | 2.5, 2.7',
    'Tools: Dial gauge | 2.6',
    'Placed for the job: Rag | 2.3',
    'Placed for the job: Tray | 2.4',
  ]);
});

it('says what is set on the wrench where that is not the torque', () => {
  const text = WHEEL.replace(
    'applies to van',
    `applies to van

fasteners
  link-nut: Link nut
    1 of M12x1.5, class 8, hex 18 mm
    torque 90 N·m
    prevailing 12 N·m
  pipe-nut: Pipe nut
    1 of M12x1.5, class 8, hex 18 mm
    torque 100 N·m

tools
  long: Long torque wrench
    torque 40 to 200 N·m
    length 400 mm
  foot: Crowfoot
    offset 50 mm`,
  ).replace(
    '    torque wheel-nut\n',
    '    torque wheel-nut\n    torque link-nut with long\n    torque pipe-nut with long, foot\n',
  );
  // 100 N·m through a crowfoot of 50 mm on a wrench of 400 mm: 100 × 400 / 450 (NAVEDTRA 14315).
  expect(needsOf(lower(text))).toContain(
    'Torque wrenches: Long torque wrench, 40 to 200 N·m | 90 (set 102), 100 (set 88.9), 160, 180 N·m',
  );
  // No line parts what is set on the wrench.
  expect(
    lower(text)
      .block('record-torques')
      .rows.map(({ torque }) => plain(torque)),
  ).toContain('90 N·m (set\u00a0102\u00a0N·m)');
  expect(torques(lower(text)).slice(1)).toEqual([
    '1 × hex 18 mm: Joint 90 N·m (66.4 FOOT-pounds) [Set the wrench to 102 N·m (75.2 FOOT-pounds)]; 12 N·m (106 INCH-pounds) of drag added',
    '1 × hex 18 mm: Joint 100 N·m (73.8 FOOT-pounds) [Set the wrench to 88.9 N·m (65.57 FOOT-pounds)]; With the crowfoot in line',
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
  expect(needsOf(job)).toContain('Parts to renew: 3 × Ignition coils | 2.1');
});

it('pulls for some vehicles alone what only they get', () => {
  const text = `${HEAD}
parts
  mount: Strut mount
    number "M-1"
    renew, when axle heavy

supplies
  grease-tube: Pin grease

fasteners
  mount-nut: Mount nuts
    4 of M10x1.5, class 8, hex 16 mm
    torque 40 N·m
    renew

removal
  step: Off
    remove 2 of mount-nut
    remove 2 of mount-nut
    remove mount

installation
  step: On
    install mount
    install 2 of mount-nut
    install 2 of mount-nut
    when axle heavy
      apply grease-tube to sills
    when axle light
      inspect mount
        reject: cracks
        if rejected
          renew mount
`;
  const job = lower(text);
  expect(needsOf(job).filter((line) => !/^(?:Sockets|Torque)/.test(line))).toEqual([
    'Parts to renew: 1 × Strut mount, axle heavy, M-1 | 2.1',
    'Parts to renew: 4 × Mount nuts M10 × 1.5 | 2.2, 2.3',
    'Only if a line asks for it: 1 × Strut mount, axle light, M-1 | 2.6',
    'Supplies: Pin grease, axle heavy | 2.4',
  ]);
  const rows = [...walkBlocks(job.document.blocks)].flatMap((block) => (block.kind === 'row' ? [block] : []));
  const fitted = rows.find(({ number }) => number === '2.1');
  expect(fitted && [fitted.body, ...fitted.notes].map(plain)).toEqual([
    'Install the strut mount.',
    'New only with axle heavy',
    'Part number M-1',
  ]);
  const light = lower(text, { option: { axle: 'light' } });
  expect(needsOf(light)).not.toContain('Parts to renew: Strut mount, M-1, 1 | 2.1');
});

it('says in the record which vehicle a torque in stages is for', () => {
  const text = WHEEL.replace(
    'applies to van',
    `applies to van

fasteners
  cover-bolt: Cover bolts
    4 of M6x1.0, class 8.8, hex 10 mm
    torque 3 N·m then 9 N·m, when axle light
    torque 3 N·m then 6 N·m then 10 N·m, when axle heavy`,
  ).replace('    torque wheel-nut\n', '    torque wheel-nut\n    torque cover-bolt\n');
  const rows = [...walkBlocks(lower(text).document.blocks)].flatMap((block) =>
    block.kind === 'record-torques'
      ? block.rows.map(({ joint, torque }) => `${joint}: ${plain(torque)}`)
      : [],
  );
  expect(rows.slice(1)).toEqual([
    'Cover bolts: axle light: first 3 N·m, then 9 N·m',
    'Cover bolts: axle heavy: first 3 N·m, then 6 N·m, then 10 N·m',
  ]);
});

it('sets apart in the record what is expected and what is rejected', () => {
  const rows = (expected: string) =>
    [
      ...walkBlocks(
        lower(`${WHEEL}    inspect wheel\n      expect: ${expected}\n      reject: cuts, bulges\n`).document
          .blocks,
      ),
    ].flatMap((block) =>
      block.kind === 'record-readings' ? block.rows.map(({ limit }) => plain(limit)) : [],
    );
  expect(rows('It runs true.')).toEqual(['Expect: It runs true. Reject: cuts, bulges']);
  expect(rows('true')).toEqual(['Expect: true; Reject: cuts, bulges']);
});

it('sets four blanks of the sign-off beside each other, and no row for one of them', () => {
  const columns = (records: string) => {
    const { document } = lower(`${HEAD}\ncompletion\n  step: End\n    record odometer\n${records}`);
    return [...walkBlocks(document.blocks)].flatMap((block) =>
      block.kind === 'fields' && block.fields.some(({ key }) => key === 'done-by')
        ? [[block.columns, block.fields.length]]
        : [],
    );
  };
  expect(columns('')).toEqual([[3, 3]]);
  expect(columns('    weigh axle-oil\n')).toEqual([[4, 4]]);
  expect(columns('    weigh axle-oil\n    record codes\n')).toEqual([[3, 5]]);
});

it('says what is drained and which waste it goes to', () => {
  const text = `${HEAD}
fluids
  coolant: Coolant
    ASTM D3306
    fill 7.8 L
  box-oil: Gearbox oil
    SAE 75W-90
    fill 1.9 L
  engine-oil: Engine oil
    API SP
    fill 4 L
  water: Wash water

removal
  step: Out
    drain box-oil
    drain coolant
    drain engine-oil, 1 L
    drain water
`;
  expect(needsOf(lower(text))).toEqual([
    'Drained, to collect apart: Used oil, gearbox oil, 1.9 L (2.0 US qt) | 1.1',
    'Drained, to collect apart: Used oil, engine oil, 1 L (1.1 US qt) | 1.3',
    'Drained, to collect apart: Coolant, 7.8 L (8.2 US qt) | 1.2',
    'Drained, to collect apart: Wash water | 1.4',
  ]);
});
