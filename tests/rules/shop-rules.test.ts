// Fifteen rules a shop writes, each kept and each broken. The work around them is always the same small job.
import { describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../language/src/settings/index.js';
import { afterFix, checkMarked, findingsOf, readMarked } from '../suite-helper.js';

const SETTINGS = {
  ...DEFAULT_SETTINGS,
  starterRulesOff: [{ rule: 'all', because: 'house rules alone are tested' }],
};
const ofState = (files: ReadonlyMap<string, string>) =>
  findingsOf(files, SETTINGS).filter((f) => f.code.startsWith('S'));

interface Shop {
  readonly rule: string;
  readonly things: string;
  readonly kept: string;
  readonly broken: string;
  /** What the finding says is missing. */
  readonly missing: string;
  /** Title of the fix, where the rule leaves no choice. */
  readonly fix?: string;
}

const WHEEL = `parts
  wheel: Wheel
    held by wheel-nut
    marked wheel
fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 160 N·m, per ?`;
const BOLT = (mark: string): string => `parts
  hub: Hub
    held by hub-bolt
fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    torque 115 N·m, per ?
    marked ${mark}`;
const LEADS = `connections
  battery-negative: Negative lead
  battery-positive: Positive lead
  module-plug: Module connector
    marked restraint`;
const REFIT = `    remove hub-bolt, hub
    install hub, hub-bolt
`;

const SHOP_RULES: Readonly<Record<string, Shop>> = {
  'pump the pedal after pushing the piston back': {
    rule: `    after push-back caliper-piston
    require pump brake-pedal
    before road-test vehicle`,
    things: `places
  caliper-piston: Caliper piston
  brake-pedal: Brake pedal`,
    kept: `    push-back caliper-piston
    pump brake-pedal
    road-test vehicle, 2 km`,
    broken: `    push-back caliper-piston
#   ^^^^^^^^^^^^^^^^^^^^^^^^ S403
    road-test vehicle, 2 km
    pump brake-pedal`,
    missing: '`pump brake-pedal` must come before `road-test vehicle`',
    fix: 'Move `pump brake-pedal` up to here',
  },
  'wait before restraint connectors': {
    rule: `    before disconnect any connection marked restraint
    require wait 10 min
    since disconnect battery-negative`,
    things: LEADS,
    kept: `    disconnect battery-negative
    wait 10 min
    disconnect module-plug
    connect module-plug, battery-negative`,
    broken: `    disconnect battery-negative
    wait 4 min
    disconnect module-plug
#   ^^^^^^^^^^^^^^^^^^^^^^ S403
    connect module-plug, battery-negative`,
    missing: '`wait 10 min` must come after `disconnect battery-negative` and before this line: 6 min more',
    fix: 'Insert `wait 6 min`',
  },
  'chock before raising': {
    rule: `    before raise vehicle
    require chock any place`,
    things: `places
  rear-wheels: Rear wheels`,
    kept: `    chock rear-wheels
    raise vehicle
    lower vehicle
    unchock rear-wheels`,
    broken: `    raise vehicle
#   ^^^^^^^^^^^^^ S403
    chock rear-wheels
    lower vehicle
    unchock rear-wheels`,
    missing: '`chock any place` must come before this line',
    fix: 'Move `chock rear-wheels` up to here',
  },
  'nothing under a vehicle on the jack alone': {
    rule: `    never remove any part
    while vehicle raised`,
    things: WHEEL,
    kept: `    raise vehicle
    support vehicle
    remove wheel-nut, wheel
    install wheel, wheel-nut
    torque wheel-nut
    lower vehicle`,
    broken: `    raise vehicle
    remove wheel-nut, wheel
#   ^^^^^^^^^^^^^^^^^^^^^^^ S403
    install wheel, wheel-nut
    torque wheel-nut
    lower vehicle`,
    missing: 'not while `vehicle raised`',
    fix: 'Insert `support vehicle`',
  },
  'negative lead off first, on last': {
    rule: `    never disconnect or connect battery-positive
    while battery-negative connected`,
    things: LEADS,
    kept: `    disconnect battery-negative
    disconnect battery-positive
    connect battery-positive
    connect battery-negative`,
    broken: `    disconnect battery-positive
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^ S403
    disconnect battery-negative
    connect battery-positive
    connect battery-negative`,
    missing: 'not while `battery-negative connected`',
    fix: 'Move `disconnect battery-negative` up to here',
  },
  'self-locking nuts new': {
    rule: `    after remove any fastener marked self-locking
    require renew it`,
    things: BOLT('self-locking'),
    kept: `    remove hub-bolt, hub
    renew hub-bolt
    install hub, hub-bolt
    torque hub-bolt`,
    broken: `    remove hub-bolt, hub
#   ^^^^^^^^^^^^^^^^^^^^ S403
    install hub, hub-bolt
    torque hub-bolt`,
    missing: '`renew hub-bolt` must come after this line',
    fix: 'Insert `renew hub-bolt`',
  },
  'cap open lines at once': {
    rule: `    after disconnect any connection marked hydraulic
    require cap it
    before next`,
    things: `connections
  hose: Return hose
    marked hydraulic`,
    kept: `    disconnect hose
    notice: Keep dirt out.
    cap hose
    connect hose`,
    broken: `    disconnect hose
#   ^^^^^^^^^^^^^^^ S403
    connect hose`,
    missing: '`cap hose` must be the next line',
    fix: 'Insert `cap hose`',
  },
  'second person on critical bolts': {
    rule: `    after torque any fastener marked critical
    require hold`,
    things: BOLT('critical'),
    kept: `${REFIT}    torque hub-bolt
    hold: A second technician checks the bolts.`,
    broken: `${REFIT}    torque hub-bolt
#   ^^^^^^^^^^^^^^^ S403`,
    missing: '`hold` must come after this line',
    fix: 'Insert `hold: A second technician checks the hub bolts.`',
  },
  'paint-mark in the same step': {
    rule: `    after torque any fastener marked critical
    require mark it
    before step ends`,
    things: BOLT('critical'),
    kept: `${REFIT}    torque hub-bolt
    mark hub-bolt`,
    broken: `${REFIT}    torque hub-bolt
#   ^^^^^^^^^^^^^^^ S403
  step: Mark
    mark hub-bolt`,
    missing: '`mark hub-bolt` must come in the same step',
    fix: 'Insert `mark hub-bolt`',
  },
  'wheel nuts again': {
    rule: `    after install any part marked wheel
    require recheck wheel-nut`,
    things: WHEEL,
    kept: `    remove wheel-nut, wheel
    install wheel, wheel-nut
    torque wheel-nut
    recheck wheel-nut, after 80 km`,
    broken: `    remove wheel-nut, wheel
    install wheel, wheel-nut
#   ^^^^^^^^^^^^^^^^^^^^^^^^ S403
    torque wheel-nut`,
    missing: '`recheck wheel-nut` must come after this line',
    fix: 'Insert `recheck wheel-nut`',
  },
  'no engine run with rags': {
    rule: `    never run engine
    while any temporary placed`,
    things: `temporary
  rag: Rag`,
    kept: `    place rag
    remove rag
    run engine, 2 min`,
    broken: `    place rag
    run engine, 2 min
#   ^^^^^^^^^^^^^^^^^ S403
    remove rag`,
    missing: 'not while `any temporary placed`',
    fix: 'Move `remove rag` up to here',
  },
  'prove dead after the service plug is out': {
    rule: `    before disconnect any connection marked high-voltage
    require measure power-voltage
    since disconnect service-plug`,
    things: `connections
  service-plug: Service plug
  power-plug: Power plug
    marked high-voltage
limits
  power-voltage: Voltage of the power side
    at most 2 V, per ?`,
    kept: `    disconnect service-plug
    measure power-voltage
    disconnect power-plug
    connect power-plug, service-plug`,
    broken: `    measure power-voltage
    disconnect service-plug
    disconnect power-plug
#   ^^^^^^^^^^^^^^^^^^^^^ S403
    connect power-plug, service-plug`,
    missing: '`measure power-voltage` must come after `disconnect service-plug` and before this line',
    fix: 'Insert `measure power-voltage`',
  },
  'heavy parts with the hoist': {
    rule: `    every remove any part over 25 kg
    needs with hoist`,
    things: `parts
  gearbox: Gearbox
    mass 60 kg
  tray: Tray
    mass 3 kg
tools
  hoist: Hoist`,
    kept: `    remove tray
    remove gearbox with hoist
    install gearbox with hoist
    install tray`,
    broken: `    remove tray
    remove gearbox
#   ^^^^^^^^^^^^^^ S403
    install gearbox with hoist
    install tray`,
    missing: 'this line needs `with hoist`',
    fix: 'Add `with hoist`',
  },
  'stand warning before raising': {
    rule: `    before raise vehicle
    require warning`,
    things: '',
    kept: `    danger: A vehicle that falls kills.
    raise vehicle
    lower vehicle`,
    broken: `    caution: Mind the sill.
    raise vehicle
#   ^^^^^^^^^^^^^ S403
    lower vehicle`,
    missing: '`warning`, or a stronger word, must come before this line',
  },
  'cover bolts to torque once': {
    rule: `    every torque any fastener marked stretch
    at most once`,
    things: BOLT('stretch').replace('torque 115 N·m', 'torque 40 N·m then 115 N·m'),
    kept: `${REFIT}    torque hub-bolt, stage 1
    torque hub-bolt, stage 2`,
    broken: `${REFIT}    torque hub-bolt
    torque hub-bolt
#   ^^^^^^^^^^^^^^^ S403`,
    missing: '`hub-bolt` has been torqued before',
  },
};

function job(shop: Shop, work: string): string {
  return `procedure A-1: Job\n\nrules\n  the-rule: What the shop asks.\n${shop.rule}\n\n${shop.things}\n\nremoval\n  step: Work\n${work}\n`;
}

describe.each(Object.entries(SHOP_RULES))('%s', (_name, shop) => {
  test('kept', () => {
    checkMarked(job(shop, shop.kept), ofState);
  });

  test('broken', () => {
    const [found] = checkMarked(job(shop, shop.broken), ofState);
    expect(found?.advice).toBe(shop.missing);
    const fix = found?.fixes[0];
    expect(fix?.title).toBe(shop.fix);
    if (fix) expect(ofState(afterFix(readMarked(job(shop, shop.broken)).files, fix.edits))).toEqual([]);
  });
});
