// The first fix of a finding leaves a procedure that checks.
import { describe, expect, test } from 'vitest';
import { format } from '../../language/src/format/index.js';
import { applyEdits } from '../faults/library.js';
import { findingsOf } from '../suite-helper.js';
import { job } from './suite/job.js';

const SEALED = `
parts
  cover: Cover
    held by bolt
    sealed with paste on face
fasteners
  bolt: Bolts
    8 of M8x1.25, class 8.8
    torque 22 N·m, per "S-1"
supplies
  paste: Sealant
    sealant
    number "P-1"
    amount 30 mL
    fit within 10 min, run after 24 h, per "S-1"
places
  face: Face
sources
  S-1: Sheet
`;

test('a part comes off before its face is cleaned and sealed, not between', () => {
  const text = job(
    SEALED,
    `clean face
apply paste to face, bead 4 mm
install cover, bolt
torque bolt`,
  );
  const files = (content: string) => new Map([['a.bay', content]]);
  const [found, ...others] = findingsOf(files(text));
  expect([found?.code, others]).toEqual(['S102', []]);
  const mended = applyEdits(text, 'a.bay', found?.fixes[0]?.edits ?? []);
  expect(findingsOf(files(mended)).map((f) => `${f.code} ${f.message}`)).toEqual([]);
});

test('a part is hung only where a lead still holds it', () => {
  const things = `
parts
  bar: Rail
    held by nut
fasteners
  nut: Nuts
    4 of M4x0.7
    torque 2 N·m, per ?
  plug: Glow plugs
    4 of M10x1.0
    torque 15 N·m, per ?
    behind bar
connections
  lead: Lead
    on bar
`;
  const fixOf = (work: string) =>
    findingsOf(new Map([['a.bay', job(things, work)]])).find((f) => f.code === 'S104')?.fixes[0]?.title;
  expect(fixOf('disconnect lead\nloosen plug\ntorque plug\nconnect lead')).toBe('Insert `remove nut, bar`');
  expect(fixOf('loosen plug\ntorque plug')).toBe('Insert `remove nut`, `hang bar`');
});

const CLIP_AND_PLUG = `
fasteners
  clip: Clip
    1 of spring-clip
  plug: Plug
    1 of M18x1.5
    torque 35 N·m, per ?
fluids
  oil: Oil
    fill at plug
`;

test('what was only loosened, or is tightened later on one way alone, is tightened by the fix', () => {
  const fixes = (work: string) =>
    findingsOf(new Map([['a.bay', job(CLIP_AND_PLUG, work)]]))
      .filter((f) => f.code === 'S303')
      .map((f) => f.fixes[0]?.title);
  expect(fixes('release clip\nrun engine')).toEqual(['Insert `tighten clip`']);
  expect(
    fixes(`remove plug
install plug
run engine
remove plug
check-level oil
  if below limit
    top-up oil
    install plug
    torque plug
  otherwise
    install plug
    torque plug`),
  ).toEqual(['Insert `torque plug`']);
});

test('a line that is done on one way only is not moved out of it', () => {
  const work = `check-level oil
  if below limit
    remove plug
    top-up oil
    install plug
    torque plug`;
  const found = findingsOf(new Map([['a.bay', job(CLIP_AND_PLUG, work)]])).find((f) => f.code === 'S112');
  expect(found?.fixes[0]?.title).toBe('Insert `remove plug`');
});

const WHEEL = `procedure WH-1: Wheel

applies to van

vehicles
  van: Van

parts
  wheel: Wheel
    held by wheel-nut

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5
    torque 160 N·m, per "S-1"

sources
  S-1: Sheet

removal
  operation wheel-off: Wheel off
    step: Off
      remove wheel-nut, wheel

installation
  operation wheel-on: Wheel on
    step: On
      install wheel, wheel-nut
      torque wheel-nut
`;

describe('what an operation took off and nothing puts back', () => {
  const HEAD =
    'procedure A-1: Job\n\nuse "wheel.bay"\n\napplies to van\n\nplaces\n  disc: Disc\n    behind wheel\n\n';
  const LOOK = '  step: Look\n    clean disc\n';
  const check = (work: string) =>
    findingsOf(
      new Map([
        ['a.bay', HEAD + work],
        ['wheel.bay', WHEEL],
      ]),
    ).filter(({ code }) => code !== 'N104');
  test.each([
    ['no line of its own', 'removal\n  perform wheel-off from WH-1\n'],
    ['work behind it', `removal\n  perform wheel-off from WH-1\n${LOOK}`],
    [
      'a drive at the end',
      `removal\n  perform wheel-off from WH-1\n${LOOK}  step: Drive\n    road-test vehicle, 5 km\n`,
    ],
  ])('is put back by its pair: %s', (_, work) => {
    const [found, ...others] = check(work);
    expect([found?.code, others]).toEqual(['S301', []]);
    expect(found?.fixes.map(({ title }) => title)).toEqual([
      'Insert `perform wheel-on from WH-1`',
      'Insert `install wheel, wheel-nut`, `torque wheel-nut`',
    ]);
    for (const fix of found?.fixes ?? []) {
      const mended = applyEdits(HEAD + work, 'a.bay', fix.edits);
      expect(format(mended, 'a.bay').text).toBe(mended);
      expect(check(mended.slice(HEAD.length)).map((f) => `${f.code} ${f.message}`)).toEqual([]);
    }
  });
});

describe('a line that is missing goes where it can be done', () => {
  const mended = (text: string): string => {
    const files = (content: string) => new Map([['a.bay', content]]);
    const [found] = findingsOf(files(text)).filter(({ code }) => /^S[1-3]/.test(code));
    return applyEdits(text, 'a.bay', found?.fixes[0]?.edits ?? []);
  };
  test('one wait before the blocks of all vehicles', () => {
    const things = `
vehicles
  van: Van
    option axle light, heavy
parts
  cover: Cover
    held by bolt
    sealed with paste on face
    closes oil
fluids
  oil: Oil
    fill 1 L, per ?
    fill 2 L, per ?, when axle heavy
fasteners
  bolt: Bolts
    8 of M8x1.25, class 8.8
    torque 22 N·m, per ?
supplies
  paste: Sealant
    sealant
    fill after 2 h
places
  face: Face
`;
    const work = `drain oil
remove bolt, cover
clean face
apply paste to face
install cover, bolt
torque bolt
when axle light
  fill oil, 1 L
when axle heavy
  fill oil, 2 L`;
    const text = job(things, work).replace('\n\n', '\n\napplies to van\n\n');
    const found = findingsOf(new Map([['a.bay', text]])).filter(({ code }) => code === 'S207');
    expect(found.map(({ variants }) => variants)).toEqual([undefined]);
    expect(mended(text)).toContain('    wait 2 h\n    when axle light\n');
  });
  test('a tag goes before the first start', () => {
    const text = job('', 'tag vehicle\nrun engine, 5 min\nroad-test vehicle, 2 km');
    expect(mended(text)).toContain('    untag vehicle\n    run engine, 5 min\n');
  });
  test('what sits on a part goes behind the last work on that part', () => {
    const things = 'parts\n  spring: Spring\n  arm: Arm\ntemporary\n  hook: Spring hook\n    on spring\n';
    const text = job(things, 'place hook\ncompress spring\nrelease spring\ninspect arm\nrun engine, 5 min');
    expect(mended(text)).toContain('    release spring\n    remove hook\n    inspect arm\n');
  });
  test('with the clause that the house asks for, in the order of the joint', () => {
    const things = `
parts
  wheel: Wheel
    held by nut
    mass 60 kg
fasteners
  nut: Nuts
    5 of M14x1.5
    torque 160 N·m, per ?
tools
  hoist: Hoist
rules
  heavy: Heavy parts go by the hoist.
    every install any part over 25 kg
    needs with hoist
places
  hub: Hub
    behind wheel
`;
    const text = `${job(things, 'remove nut, wheel\nclean hub')}\ninstallation\n  step: On\n    clean hub\n`;
    expect(mended(text)).toContain('    install wheel with hoist\n    install nut\n    torque nut\n');
  });
  test('nuts that a line torques on the ground are made snug before it is lowered', () => {
    const things = `
parts
  wheel: Wheel
    held by nut
    marked wheel
fasteners
  nut: Nuts
    5 of M14x1.5
    torque 160 N·m, per ?
`;
    const work =
      'raise vehicle\nsupport vehicle\nremove nut, wheel\ninstall wheel, nut\nlower vehicle\ntorque nut, on ground';
    expect(mended(job(things, work))).toContain('    snug nut\n    lower vehicle\n');
  });
});

const GAP = `
parts
  door: Door
    held by bolt
  trim: Trim
    held by clip
fasteners
  bolt: Bolts
    4 of M8x1.25
    torque 25 N·m, per "S-1"
  clip: Clips
    4 of clip
limits
  gap: Gap
    4 to 6 mm, per "S-1"
places
  seam: Seam
    behind trim
sources
  S-1: Sheet
`;

test.each([
  [
    'bolts that are loosened in a branch, and were to be snug before its test',
    `loosen bolt
measure gap
  if outside limit
    loosen bolt
    snug bolt
torque bolt`,
    'Insert `snug bolt`',
  ],
  [
    'a look in the completion at what is covered again',
    `  step: Work
    remove clip, trim
    clean seam
    install trim, clip

completion
  step: Look
    inspect seam
      reject: oil`,
    'Insert `run engine`',
  ],
])('the line that was missed before: %s', (_, work, title) => {
  const files = (content: string) => new Map([['a.bay', content]]);
  const of = (content: string) => findingsOf(files(content)).filter(({ code }) => code.startsWith('S'));
  const text = job(GAP, work);
  const [found, ...others] = of(text);
  expect([found?.fixes.map((fix) => fix.title), others]).toEqual([[title], []]);
  expect(of(applyEdits(text, 'a.bay', found?.fixes[0]?.edits ?? []))).toEqual([]);
});

test('a refrigerant circuit that was opened is evacuated, and is told of once', () => {
  const text = job(
    `
circuits
  cold: Refrigerant circuit
    uses gas
fluids
  gas: Refrigerant
    refrigerant R-1234yf
    mass 530 ±15 g, per ?
    marked air-conditioning
connections
  line: Line
    in cold
`,
    `recover gas
disconnect line
connect line
charge gas`,
  );
  const found = findingsOf(new Map([['a.bay', text]])).filter(({ code }) => code.startsWith('S'));
  expect(found.map((f) => `${f.code} ${f.message} / ${f.fixes[0]?.title}`)).toEqual([
    'S308 `cold` is opened here and never evacuated / Insert `evacuate cold`',
  ]);
});

test.each([
  ['install trim, door', 'S201 `door` is put on only later, and must be before `trim`', 'install door, trim'],
  ['install door, trim', undefined, undefined],
])('one line puts on in order: %s', (line, message, mended) => {
  const things = 'parts\n  door: Door\n    behind trim\n  trim: Trim\n';
  const text = job(things, `remove trim, door\n${line}`);
  const of = (content: string) => findingsOf(new Map([['a.bay', content]]));
  const [found, ...others] = of(text);
  expect([found && `${found.code} ${found.message}`, others]).toEqual([message, []]);
  expect(found?.fixes[0]?.edits[0]?.text).toBe(mended?.slice('install '.length));
});

test('what rides in a part may go in by the same line', () => {
  const things = 'parts\n  hub: Hub\n  bearing: Bearing\n    in hub\n';
  const text = job(things, 'remove bearing, hub\ninstall hub, bearing');
  expect(findingsOf(new Map([['a.bay', text]]))).toEqual([]);
});

test('nuts that are torqued on the ground are made snug before the lowering, not torqued in the air', () => {
  const things = `
parts
  wheel: Wheel
    held by nut
    marked wheel
fasteners
  nut: Wheel nuts
    5 of M12x1.5
    torque 110 N·m, per "S-1"
sources
  S-1: Sheet
`;
  const work =
    'raise vehicle\nsupport vehicle\nremove nut, wheel\ninstall wheel, nut\nlower vehicle\ntorque nut';
  const found = findingsOf(new Map([['a.bay', job(things, work)]])).find(({ code }) => code === 'S304');
  expect(found?.fixes.map((fix) => fix.title)).toEqual(['Insert `snug nut`']);
});

test('a nut without a torque is where the setting that hangs on it is right', () => {
  const things = `
parts
  cable: Cable
fasteners
  stop-nut: Stop nut
    1 of M8x1.25
    no torque: Set by the travel.
adjustments
  travel: Travel
    disturbed by stop-nut
`;
  const of = (work: string) => findingsOf(new Map([['a.bay', job(things, work)]])).map(({ code }) => code);
  expect(of('loosen stop-nut\nremove cable\ninstall cable\nadjust travel')).toEqual([]);
  expect(of('loosen stop-nut\nremove cable\ninstall cable')).toContain('S303');
});
