// Usual practice: every rule kept and broken, bound by marks alone, switched off by name, silent on the samples.
import { describe, expect, test } from 'vitest';
import { STARTER_TEXT, starterRules } from '../../language/src/rules/starter.js';
import { STARTER_MARKS } from '../../language/src/rules/starter-marks.js';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';
import { parse } from '../../language/src/syntax/index.js';
import { applyEdits, libraryOver, readLibrary } from '../faults/library.js';
import { findingsOf } from '../suite-helper.js';

interface Practice {
  readonly things?: string;
  readonly kept: string;
  readonly broken: string;
}

const CALIPER = `parts
  caliper: Caliper
    marked brake-caliper
places
  piston: Piston
    marked brake-caliper
  pedal: Pedal
    marked brake-pedal
conditions
  lever: Selector
    park, neutral
    marked selector
fluids
  brake-fluid: Brake fluid
    DOT 4`;
const LEADS = `conditions
  key: Ignition
    off, on
    marked ignition
connections
  minus: Negative lead
    marked battery-negative
  plus: Positive lead
    marked battery-positive
  airbag-plug: Airbag plug
    marked restraint
  loom: Engine loom
    marked engine-wiring
  service-plug: Service plug
    marked service-plug
  power-plug: Power plug
    marked high-voltage
limits
  power-voltage: Voltage
    at most 2 V, per ?`;
const LINES = `circuits
  fuel-circuit: Fuel circuit
  cold-circuit: Cold circuit
    uses gas
  brake-circuit: Brake circuit
    marked brake
fluids
  gas: Refrigerant
    refrigerant R-1234yf
    fill 520 g, per ?
    marked air-conditioning
connections
  fuel-line: Fuel line
    marked fuel
  cold-line: Refrigerant line
    in cold-circuit
    marked air-conditioning
  press-line: Pressure line
    marked pressure-line
  hose: Hydraulic hose
    marked hydraulic
  open-line: Line
    marked keep-clean
  sensor-plug: Sensor plug
    marked sensor
places
  pedal: Pedal`;
const GEARS = `parts
  gear-cover: Gear cover
    marked open-gears
  spring: Spring
  cap: Expansion cap
    marked pressure-cap
conditions
  heat: Engine temperature
    cold, hot
    free
    marked engine-heat
fasteners
  rod-nut: Rod nut
    1 of M12x1.5
    torque 50 N·m, per ?
    marked loaded-spring
temporary
  port-plug: Port plug
    marked in-opening
places
  gears: Gears`;
const CHAMBER = `parts
  chamber: Spring brake chamber
    marked loaded-spring
connections
  air-line: Air line
    on chamber
    marked pressure-line
circuits
  air: Air
conditions
  air-brake: Spring brake
    applied, released
    free
    marked spring-brake
temporary
  bolt: Caging bolt
    on chamber
    marked caging-bolt`;
const CAGED = (on: string): string =>
  `    place bolt\n    compress chamber\n    set air-brake applied\n    relieve air\n    disconnect air-line\n    remove chamber\n    ${on}`;
const OFF_AND_ON = (before: string, plug: string, after: string): string =>
  `    ${before}\n    disconnect ${plug}\n    connect ${plug}\n    ${after}`;

const PRACTICE: Readonly<Record<string, Practice>> = {
  'usual-chocks': {
    things: 'places\n  rear: Rear wheels',
    kept: '    chock rear\n    raise vehicle\n    support vehicle\n    lower vehicle\n    unchock rear',
    broken: '    raise vehicle\n    support vehicle\n    lower vehicle',
  },
  'usual-stands': {
    things: 'parts\n  tray: Tray',
    kept: '    remove tray\n    install tray',
    broken: '    raise vehicle\n    remove tray\n    install tray\n    lower vehicle',
  },
  'usual-suspension': {
    things: `${CALIPER}\n  rear: Rear wheels`.replace('  rear: Rear wheels', 'places\n  rear: Rear wheels'),
    kept: '    chock rear\n    raise vehicle\n    support vehicle\n    hang caliper\n    install caliper\n    lower vehicle\n    unchock rear',
    broken:
      '    chock rear\n    raise vehicle\n    support vehicle\n    hang caliper\n    load suspension\n    unload suspension\n    install caliper\n    lower vehicle\n    unchock rear',
  },
  'usual-pedal': {
    things: CALIPER,
    kept: '    push-back piston\n    inspect brake-fluid\n    pump pedal\n    road-test vehicle',
    broken: '    push-back piston\n    inspect brake-fluid\n    road-test vehicle\n    pump pedal',
  },
  'usual-reservoir': {
    things: CALIPER,
    kept: '    push-back piston\n    inspect brake-fluid\n    pump pedal',
    broken: '    push-back piston\n    pump pedal',
  },
  'usual-pedal-bled': {
    things: LINES,
    kept: '    bleed brake-circuit\n    test pedal\n    road-test vehicle',
    broken: '    bleed brake-circuit\n    road-test vehicle',
  },
  'usual-pedal-still': {
    things: CALIPER,
    kept: '    pump pedal\n    remove caliper\n    install caliper',
    broken: '    remove caliper\n    pump pedal\n    install caliper',
  },
  'usual-selector': {
    things: CALIPER,
    kept: '    set lever park\n    remove caliper\n    install caliper',
    broken: '    remove caliper\n    set lever park\n    install caliper',
  },
  'usual-recheck': {
    things:
      'parts\n  wheel: Wheel\n    held by nut\n    marked wheel\nfasteners\n  nut: Nuts\n    5 of M14x1.5\n    torque 160 N·m, per ?',
    kept: '    remove nut, wheel\n    install wheel, nut\n    torque nut\n    recheck nut, after 80 km',
    broken: '    remove nut, wheel\n    install wheel, nut\n    torque nut',
  },
  'usual-restraint-ignition': {
    things: LEADS,
    kept: OFF_AND_ON('set key off\n    disconnect minus\n    wait 1 min', 'airbag-plug', 'connect minus'),
    broken: OFF_AND_ON(
      'set key on\n    disconnect minus\n    wait 1 min',
      'airbag-plug',
      'connect minus\n    set key off',
    ),
  },
  'usual-restraint-battery': {
    things: LEADS,
    kept: OFF_AND_ON('disconnect minus\n    wait 1 min', 'airbag-plug', 'connect minus'),
    broken: '    disconnect airbag-plug\n    connect airbag-plug',
  },
  'usual-restraint-wait': {
    things: LEADS,
    kept: OFF_AND_ON('disconnect minus\n    wait 3 min', 'airbag-plug', 'connect minus'),
    broken: OFF_AND_ON('wait 5 min\n    disconnect minus', 'airbag-plug', 'connect minus'),
  },
  'usual-battery-off': {
    things: LEADS,
    kept: OFF_AND_ON('disconnect minus', 'plus', 'connect minus'),
    broken: '    disconnect plus\n    disconnect minus\n    connect plus\n    connect minus',
  },
  'usual-battery-on': {
    things: LEADS,
    kept: OFF_AND_ON('disconnect minus', 'plus', 'connect minus'),
    broken: '    disconnect minus\n    disconnect plus\n    connect minus\n    connect plus',
  },
  'usual-wiring': {
    things: LEADS,
    kept: OFF_AND_ON('disconnect minus', 'loom', 'connect minus'),
    broken: '    disconnect loom\n    connect loom',
  },
  'usual-hv-low': {
    things: LEADS,
    kept: OFF_AND_ON(
      'disconnect minus\n    disconnect service-plug\n    wait 10 min\n    measure power-voltage',
      'power-plug',
      'connect service-plug, minus',
    ),
    broken: OFF_AND_ON(
      'disconnect service-plug\n    wait 10 min\n    measure power-voltage',
      'power-plug',
      'connect service-plug',
    ),
  },
  'usual-hv-wait': {
    things: LEADS,
    kept: OFF_AND_ON(
      'disconnect minus\n    disconnect service-plug\n    measure power-voltage\n    wait 15 min',
      'power-plug',
      'connect service-plug, minus',
    ),
    broken: OFF_AND_ON(
      'disconnect minus\n    disconnect service-plug\n    wait 2 min\n    measure power-voltage',
      'power-plug',
      'connect service-plug, minus',
    ),
  },
  'usual-hv-dead': {
    things: LEADS,
    kept: OFF_AND_ON(
      'disconnect minus\n    disconnect service-plug\n    wait 10 min\n    test power-plug',
      'power-plug',
      'connect service-plug, minus',
    ),
    broken: OFF_AND_ON(
      'disconnect minus\n    measure power-voltage\n    disconnect service-plug\n    wait 10 min',
      'power-plug',
      'connect service-plug, minus',
    ),
  },
  'usual-hv-lock-out': {
    things: `${LEADS}\ntemporary\n  lock: Lock\n    marked lock-out`,
    kept: OFF_AND_ON(
      'disconnect minus\n    disconnect service-plug\n    place lock\n    wait 10 min\n    measure power-voltage',
      'power-plug',
      'remove lock\n    connect service-plug, minus',
    ),
    broken: OFF_AND_ON(
      'disconnect minus\n    disconnect service-plug\n    wait 10 min\n    measure power-voltage',
      'power-plug',
      'place lock\n    remove lock\n    connect service-plug, minus',
    ),
  },
  'usual-fuel-pressure': {
    things: LINES,
    kept: OFF_AND_ON('relieve fuel-circuit', 'fuel-line', 'inspect fuel-line'),
    broken: '    disconnect fuel-line\n    connect fuel-line\n    inspect fuel-line',
  },
  'usual-fuel-leaks': {
    things: LINES,
    kept: OFF_AND_ON('relieve fuel-circuit', 'fuel-line', 'inspect fuel-line'),
    broken: OFF_AND_ON('relieve fuel-circuit', 'fuel-line', 'pump pedal'),
  },
  'usual-recover': {
    things: LINES,
    kept: OFF_AND_ON('recover gas', 'cold-line', 'evacuate cold-circuit\n    charge gas, 520 g'),
    broken: OFF_AND_ON('drain gas', 'cold-line', 'evacuate cold-circuit\n    charge gas, 520 g'),
  },
  'usual-evacuate': {
    things: LINES,
    kept: OFF_AND_ON('recover gas', 'cold-line', 'evacuate cold-circuit\n    charge gas, 520 g'),
    broken: '    recover gas\n    charge gas, 520 g',
  },
  'usual-line-pressure': {
    things: LINES,
    kept: OFF_AND_ON('relieve fuel-circuit', 'press-line', 'pump pedal'),
    broken: '    disconnect press-line\n    connect press-line',
  },
  'usual-caps': {
    things: LINES,
    kept: '    disconnect hose\n    cap hose\n  step: Join\n    connect hose',
    broken: '    disconnect hose\n  step: Join\n    connect hose',
  },
  'usual-clean-first': {
    things: LINES,
    kept: OFF_AND_ON('clean open-line', 'open-line', 'pump pedal'),
    broken: '    disconnect open-line\n    connect open-line',
  },
  'usual-codes': {
    things: LINES,
    kept: OFF_AND_ON('read codes', 'sensor-plug', 'clear codes'),
    broken: OFF_AND_ON('read codes', 'sensor-plug', 'pump pedal'),
  },
  'usual-spring': {
    things: GEARS,
    kept: '    compress spring\n    loosen rod-nut\n    torque rod-nut',
    broken: '    loosen rod-nut\n    torque rod-nut',
  },
  'usual-uncage-lines': {
    things: CHAMBER,
    kept: CAGED(
      'install chamber\n    connect air-line\n    set air-brake released\n    release bolt\n    remove bolt',
    ),
    broken: CAGED('install chamber\n    set air-brake released\n    remove bolt\n    connect air-line'),
  },
  'usual-uncage-air': {
    things: CHAMBER,
    kept: CAGED('install chamber\n    connect air-line\n    set air-brake released\n    remove bolt'),
    broken: CAGED('install chamber\n    connect air-line\n    remove bolt'),
  },
  'usual-phase': {
    things: 'parts\n  belt: Timing belt\n    marked in-phase\n  pulley: Pulley',
    kept: '    mark pulley\n    remove belt\n    install belt',
    broken: '    remove belt\n    mark pulley\n    install belt',
  },
  'usual-tagged': {
    kept: '    tag vehicle\n    untag vehicle\n    run engine',
    broken: '    tag vehicle\n    run engine\n    untag vehicle',
  },
  'usual-pressure-cap': {
    things: GEARS,
    kept: '    set heat cold\n    remove cap\n    install cap',
    broken: '    set heat hot\n    remove cap\n    install cap',
  },
  'usual-look-inside': {
    things: GEARS,
    kept: '    remove gear-cover\n    inspect gears\n    install gear-cover',
    broken: '    remove gear-cover\n    install gear-cover',
  },
  'usual-nothing-turns': {
    things: GEARS,
    kept: '    remove gear-cover\n    inspect gears\n    install gear-cover\n    run engine',
    broken: '    remove gear-cover\n    run engine\n    inspect gears\n    install gear-cover',
  },
  'usual-openings': {
    things: GEARS,
    kept: '    place port-plug\n    remove port-plug\n    run engine',
    broken: '    place port-plug\n    run engine\n    remove port-plug',
  },
};

const job = ({ things = '' }: Practice, work: string): ReadonlyMap<string, string> =>
  new Map([['a.bay', `procedure A-1: Job\n\n${things}\n\nremoval\n  step: Work\n${work}\n`]]);
const usual = (files: ReadonlyMap<string, string>, off: readonly string[] = []): string[] =>
  findingsOf(files, {
    ...DEFAULT_SETTINGS,
    starterRulesOff: off.map((rule) => ({ rule, because: 'we do it another way' })),
  })
    .filter((f) => f.code.startsWith('S'))
    .map((f) => (f.code === 'S404' ? (/`([^`]+)`/.exec(f.message)?.[1] ?? '') : `${f.code} ${f.message}`));

test('the pack is readable, and every rule of it is tested', () => {
  expect(parse(STARTER_TEXT, 'starter.bay').findings).toEqual([]);
  expect(
    starterRules()
      .map((r) => r.thing.name)
      .sort(),
  ).toEqual(Object.keys(PRACTICE).sort());
});

test('every mark it looks for is explained, and no other', () => {
  const used = [...STARTER_TEXT.matchAll(/marked ([a-z-]+)/g)].map((m) => m[1]);
  expect([...new Set(used)].sort()).toEqual(Object.keys(STARTER_MARKS).sort());
});

describe.each(Object.entries(PRACTICE))('%s', (name, practice) => {
  test('is silent on right work', () => {
    expect(usual(job(practice, practice.kept))).toEqual([]);
  });

  test('speaks of wrong work, alone, and not when switched off', () => {
    expect(usual(job(practice, practice.broken))).toEqual([name]);
    expect(usual(job(practice, practice.broken), [name])).not.toContain(name);
    expect(usual(job(practice, practice.broken), ['all'])).toEqual([]);
  });

  test('is ended by the fix that it has', () => {
    const files = job(practice, practice.broken);
    const [fix] = findingsOf(files).find(({ code }) => code === 'S404')?.fixes ?? [];
    if (!fix) return;
    const mended = applyEdits(files.get('a.bay') ?? '', 'a.bay', fix.edits);
    expect(usual(new Map([['a.bay', mended]])), mended).not.toContain(name);
  });
});

test('a house rule that asks the same takes its place', () => {
  const files = new Map([
    [
      'a.bay',
      `procedure A-1: Job

rules
  our-stands: Stands first.
    never remove any part
    while vehicle raised

parts
  tray: Tray

removal
  step: Work
    raise vehicle
    remove tray
    install tray
    lower vehicle
`,
    ],
  ]);
  expect(usual(files)).toEqual(['S403 house rule `our-stands` is broken: Stands first']);
});

test('the samples are silent', () => {
  for (const root of ['samples', 'samples/us']) {
    const { library } = libraryOver(readLibrary(new URL(`../../${root}`, import.meta.url).pathname));
    const found = library.host.list().flatMap((path) => library.analyse(path)?.findings ?? []);
    expect(found.filter((f) => f.code === 'S404').map((f) => `${f.file}: ${f.message}`)).toEqual([]);
  }
});

test('a lock-out that is missing is one fault, and its fix puts it where it is needed', () => {
  const practice = PRACTICE['usual-hv-lock-out'];
  const files = job(
    practice ?? { kept: '', broken: '' },
    practice?.kept.replace('    place lock\n', '') ?? '',
  );
  const text = files.get('a.bay') ?? '';
  const found = findingsOf(files).filter(({ code }) => code.startsWith('S'));
  expect(found.map(({ code }) => code)).toEqual(['S404']);
  const mended = applyEdits(text, 'a.bay', found[0]?.fixes[0]?.edits ?? []);
  expect(mended).toContain('    place lock\n    disconnect power-plug\n');
  expect(usual(new Map([['a.bay', mended]]))).toEqual([]);
});

test.each([
  [
    'the nuts of the wheel that goes on',
    'parts\n  wheel: Wheel\n    held by nut\n    marked wheel\nfasteners\n  nut: Nuts\n    5 of M14x1.5\n    torque 160 N·m, per ?\n  bolt: Bolts\n    2 of M12x1.5\n    torque 110 N·m, per ?',
    '    remove nut, wheel\n    install wheel, nut\n    torque nut\n    loosen bolt\n    torque bolt',
    'Insert `recheck nut`',
  ],
  [
    'the wheels whose chocks are taken away later',
    'places\n  front: Front wheels\n  rear: Rear wheels',
    '    raise vehicle\n    support vehicle\n    clean front\n    lower vehicle\n    unchock rear',
    'Insert `chock rear`',
  ],
  [
    'the part with the spring in it',
    'parts\n  chamber: Chamber\n    marked loaded-spring\n  arm: Arm',
    '    remove chamber\n    install chamber\n    remove arm\n    install arm',
    'Insert `compress chamber`',
  ],
])('of several things a fix takes %s', (_, things, work, title) => {
  const found = findingsOf(job({ things, kept: '', broken: '' }, work)).find(({ code }) => code === 'S404');
  expect(found?.fixes.map((fix) => fix.title)).toEqual([title]);
});

test('chocks that are missing are one fault, by the house rule and by usual practice', () => {
  const text = `procedure A-1: Job

rules
  our-chocks: Chocks first.
    before raise vehicle
    require chock any place

places
  rear: Rear wheels
  front: Front wheels

removal
  step: Up and down
    raise vehicle
    support vehicle
    clean front
    lower vehicle
    unchock rear
    road-test vehicle, 2 km
`;
  const files = new Map([['a.bay', text]]);
  expect(usual(files)).toEqual(['S403 house rule `our-chocks` is broken: Chocks first']);
  const [fix] = findingsOf(files).find(({ code }) => code === 'S403')?.fixes ?? [];
  const mended = applyEdits(text, 'a.bay', fix?.edits ?? []);
  expect(mended).toContain('    chock rear\n    raise vehicle\n');
  expect(usual(new Map([['a.bay', mended]]))).toEqual([]);
});

test('what a performed operation lacks before it stands in a step before it', () => {
  const up = `procedure UP-1: Lift

removal
  operation up: Vehicle up
    step: Up
      raise vehicle
      support vehicle
`;
  const text = `procedure A-1: Job

use "up.bay"

places
  rear: Rear wheels

removal
  perform up from UP-1
  step: Down
    lower vehicle
    unchock rear
`;
  const of = (own: string) =>
    findingsOf(
      new Map([
        ['a.bay', own],
        ['up.bay', up],
      ]),
    ).filter(({ code, file }) => file === 'a.bay' && code.startsWith('S'));
  const found = of(text).find(({ code }) => code === 'S404');
  const mended = applyEdits(text, 'a.bay', found?.fixes[0]?.edits ?? []);
  expect(mended).toContain('removal\n  step: Put right\n    chock rear\n  perform up');
  expect(of(mended)).toEqual([]);
});

test('what each vehicle needs in a block of its own is inserted once, before the blocks', () => {
  const text = `procedure A-1: Charge

applies to van

vehicles
  van: Van
    option axle light, heavy

circuits
  cold: Refrigerant circuit
    uses gas
fluids
  gas: Refrigerant
    refrigerant R-1234yf
    mass 530 ±15 g, per ?
    mass 610 ±15 g, per ?, when axle heavy
    marked air-conditioning

installation
  step: Charge
    recover gas
    when axle light
      charge gas, 530 g
    when axle heavy
      charge gas, 610 g
`;
  const files = new Map([['a.bay', text]]);
  expect(usual(files)).toContain('usual-evacuate');
  const [fix] = findingsOf(files).find(({ code }) => code === 'S404')?.fixes ?? [];
  const mended = applyEdits(text, 'a.bay', fix?.edits ?? []);
  expect(mended).toContain('    evacuate cold\n    when axle light\n');
  expect(usual(new Map([['a.bay', mended]]))).toEqual([]);
});

test('what is so only because a finding assumed it breaks no rule', () => {
  // The battery is never put back: the lead that goes on it is then taken to be on, and the practice says no more.
  const text = `procedure T-1: Battery

parts
  battery: Battery
connections
  minus: Negative lead
    on battery
    marked battery-negative
  plus: Positive lead
    on battery
    marked battery-positive
  vent: Vent hose
    on battery

removal
  step: Off
    disconnect minus
    disconnect plus
    disconnect vent
    remove battery
installation
  step: On
    connect vent
    connect plus
    connect minus
`;
  const codes = findingsOf(new Map([['t.bay', text]])).map(({ code }) => code);
  expect(codes.filter((code) => /^S/.test(code))).toEqual(['S301']);
});

test.each([
  ['says not what', 'support on stands', 'N208 `support` says not what'],
  ['names what is not declared', 'support van on stands', 'N101 `van` is not declared'],
])('stands whose line %s are told of once, with the vehicle as the fix', (_, line, message) => {
  const text = `procedure A-1: Job

parts
  tray: Tray
places
  rear: Rear wheels
temporary
  stands: Axle stands

removal
  step: Up
    chock rear
    raise vehicle
    place stands
    ${line}
    remove tray
    install tray
    lower vehicle
    remove stands
    unchock rear
`;
  const of = (own: string) =>
    findingsOf(new Map([['a.bay', own]])).filter(({ code }) => !code.startsWith('H'));
  const found = of(text);
  expect(found.map((f) => `${f.code} ${f.message}`)).toEqual([expect.stringContaining(message)]);
  expect(of(applyEdits(text, 'a.bay', found[0]?.fixes[0]?.edits ?? []))).toEqual([]);
});

test('no chocks are offered at the points the vehicle is lifted at', () => {
  const things = 'places\n  sill-points: Sill points';
  const work = '    raise vehicle at sill-points\n    support vehicle\n    lower vehicle';
  const found = findingsOf(job({ things, kept: '', broken: '' }, work)).find(({ code }) => code === 'S404');
  expect(found?.fixes).toEqual([]);
});
