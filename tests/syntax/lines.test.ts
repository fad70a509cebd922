// What each kind of line says: the fields of the tree, row by row.
import { describe, expect, test } from 'vitest';
import { type Line, parse, walkLines } from '../../language/src/syntax/index.js';
import { dumpOf } from './read.js';

/** The last row of the tree of a text that reads without a finding. */
function lastRow(text: string): string {
  expect(parse(text, 'a.bay').findings).toEqual([]);
  return dumpOf(text).split('\n').pop()?.trim() ?? '';
}
const head = (code: string) => lastRow(`procedure A-1: T\n${code}`);
const step = (code: string) => lastRow(`procedure A-1: T\nremoval\n  step: S\n    ${code}`);
const entry = (code: string, section = 'fasteners') =>
  lastRow(`procedure A-1: T\n${section}\n  thing: Thing\n    ${code}`);
const rule = (code: string) => entry(code, 'rules');

describe('heads of files', () => {
  test.each([
    [
      'applies to van-3 from 2018 to 2025, when axle heavy',
      'applies vehicle=van-3 from=2018 to=2025 guard=(terms=[(option=axle values=[heavy])])',
    ],
    ['labour 1 h 40 min', 'labour time=<1 h 40 min>'],
    ['crew 2: One at the pedal.', 'crew count=2 text="One at the pedal."'],
    ['revision 4 on 2026-10-05: Torque raised.', 'revision number=4 day=2026-10-05 text="Torque raised."'],
    ['status released by KM, TR on 2026-10-05', 'status status=released by=[KM, TR] day=2026-10-05'],
    ['status draft', 'status status=draft'],
    ['review 2027-10-05', 'review day=2027-10-05'],
    ['accept F203, Q101: Book value.', 'accept codes=[F203, Q101] text="Book value."'],
    ['labour ?', 'labour time=<?>'],
  ])('%s', (code, row) => expect(head(code)).toBe(row));
});

describe('entries', () => {
  test.each([
    [
      '4 of M12x1.5, class 10.9, hex 18 mm',
      'clauses clauses=[(of raw=M12x1.5 count=4), (class raw=10.9), (hex spec=[(measure=<18 mm>)])]',
    ],
    [
      '1 of 3/4-14 NPT, square 1/2 in',
      'clauses clauses=[(of raw=3/4-14 NPT count=1), (square spec=[(measure=<1/2 in>)])]',
    ],
    ['? of hex 13 mm', 'clauses clauses=[(of count=?), (hex spec=[(measure=<13 mm>)])]'],
    ['1 of 7/16-14 UNC, grade 5', 'clauses clauses=[(of raw=7/16-14 UNC count=1), (grade raw=5)]'],
    ['2 of M14×1,5', 'clauses clauses=[(of raw=M14×1,5 count=2)]'],
    [
      'torque 115 N·m, per "HL-114", when axle heavy',
      'clauses clauses=[(torque spec=[(measure=<115 N·m>)]), (per raw="HL-114")] guard=(terms=[(option=axle values=[heavy])])',
    ],
    ['torque ?', 'clauses clauses=[(torque spec=[(measure=<?>)])]'],
    [
      'torque 60 Nm then 90° then back 180 deg',
      'clauses clauses=[(torque spec=[(measure=<60 N·m>), (measure=<90°>), (back=true measure=<180°>)])]',
    ],
    [
      'torque 15 then 40 ft·lbf',
      'clauses clauses=[(torque spec=[(measure=<15 ft·lbf>), (measure=<40 ft·lbf>)])]',
    ],
    ['no torque: Hand tight.', 'clauses clauses=[(no torque)] text="Hand tight."'],
    [
      'held by 1 of cover-bolt, parking-brake applied',
      'clauses clauses=[(held by items=[(count=1 name=cover-bolt), (name=parking-brake value=applied)])]',
    ],
    ['marked critical, self-locking', 'clauses clauses=[(marked words=[critical, self-locking])]'],
    ['marked refrigerant', 'clauses clauses=[(marked words=[refrigerant])]'],
    [
      'marked brake, refrigerant, order, renew',
      'clauses clauses=[(marked words=[brake, refrigerant, order]), (renew)]',
    ],
    ['marked brake, class 10.9', 'clauses clauses=[(marked words=[brake]), (class raw=10.9)]'],
    [
      'only when engine petrol or diesel and year 2021 to 2025',
      'clauses guard=(only=true terms=[(option=engine values=[petrol, diesel]), (option=year years=(from=2021 to=2025))])',
    ],
  ])('%s', (code, row) => expect(entry(code)).toBe(row));

  test('an order may name its rows after a comma', () => {
    expect(entry('order inside-out, 2 rows, per "HL-1"')).toBe(
      'clauses clauses=[(order raw=inside-out, 2 rows), (per raw="HL-1")]',
    );
  });

  test('a bound is not cut by a clause word that ends in `at`', () => {
    expect(entry('fill at least 3 L', 'fluids')).toBe(
      'clauses clauses=[(fill spec=[(measure=<at least 3 L>)])]',
    );
    expect(entry('fill at plug', 'fluids')).toBe('clauses clauses=[(fill at items=[plug])]');
  });

  test('limits stand alone or between bounds', () => {
    expect(entry('402 ±5 mm, per "HL-130"', 'limits')).toContain('(bare spec=[(measure=<402 ±5 mm>)])');
    expect(entry('at least 22.0 mm, new 24.0 mm', 'limits')).toBe(
      'clauses clauses=[(at least spec=[(measure=<at least 22.0 mm>)]), (new spec=[(measure=<24.0 mm>)])]',
    );
  });

  test('conditions list their values, `on` among them', () => {
    expect(entry('off, on', 'conditions')).toBe('values values=[off, on]');
    expect(entry('on, off', 'conditions')).toBe('values values=[on, off]');
    expect(entry('free', 'conditions')).toBe('clauses clauses=[(free)]');
  });

  test('a vehicle has options, a shared message its signal word', () => {
    expect(entry('option axle light, heavy', 'vehicles')).toBe(
      'clauses clauses=[(option words=[axle, light, heavy])]',
    );
    expect(entry('warning', 'messages')).toBe('message signal=warning');
  });

  test('prerequisites', () => {
    expect(lastRow('procedure A-1: T\nprerequisites\n  forks lowered')).toBe(
      'prerequisite name=forks value=lowered',
    );
    expect(lastRow('procedure A-1: T\nprerequisites\n  lift, rated 2500 kg')).toBe(
      'prerequisite name=lift clauses=[(rated spec=[(measure=<2500 kg>)])]',
    );
  });
});

describe('steps', () => {
  test.each([
    [
      'set ignition on, when axle heavy',
      'statement verb=set items=[(name=ignition value=on)] guard=(terms=[(option=axle values=[heavy])])',
    ],
    [
      'remove 2 of cover-bolt, cover-tag with seal-puller or pry-bar',
      'statement verb=remove items=[(count=2 name=cover-bolt), cover-tag] clauses=[(with items=[(name=seal-puller alternatives=[pry-bar])])]',
    ],
    [
      'loosen wheel-nut, 1/2 turn',
      'statement verb=loosen items=[wheel-nut] clauses=[(bare spec=[(measure=<1/2 turn>)])]',
    ],
    [
      'run engine, 15 min to 90 °C',
      'statement verb=run items=[engine] clauses=[(bare spec=[(measure=<15 min>)]), (to spec=[(measure=<90 °C>)])]',
    ],
    ['wait 15 min to 1 h', 'statement verb=wait clauses=[(bare spec=[(measure=<15 min to 1 h>)])]'],
    [
      'wait 10 min since disconnect battery-negative',
      'statement verb=wait clauses=[(bare spec=[(measure=<10 min>)]), (since event=(verbs=[disconnect] target=(form=names names=[battery-negative])))]',
    ],
    [
      'fill drive-oil, 17 US pt, until level at fill-plug',
      'statement verb=fill items=[drive-oil] clauses=[(bare spec=[(measure=<17 US pt>)]), (until level at items=[fill-plug])]',
    ],
    [
      'torque hub-bolt, stage 1, at ride height',
      'statement verb=torque items=[hub-bolt] clauses=[(stage raw=1), (at ride height)]',
    ],
    ['install pump with bar', 'statement verb=install items=[pump] clauses=[(with items=[bar])]'],
    ['remove plug, cap', 'statement verb=remove items=[plug, cap]'],
    ['perform wheel-off from WH-01, side left', 'perform operation=wheel-off from=WH-01 side=left'],
    ['if needed: It will not come off.', 'if test=needed text="It will not come off."'],
    ['if arch-height outside limit', 'if test=outside subject=arch-height'],
    ['repeat 2 times', 'repeat times=<2 times>'],
    ['clip "hub.mp4" at 5 min 36 s: The pull.', 'clip path="hub.mp4" at=<5 min 36 s> text="The pull."'],
    ['warning stands-first', 'message signal=warning reference=stands-first'],
  ])('%s', (code, row) => expect(step(code)).toBe(row));
});

describe('rules', () => {
  test.each([
    [
      'before disconnect any connection marked restraint',
      'rule clauses=[(before pattern=(verbs=[disconnect] target=(form=any kind=connection mark=restraint)))]',
    ],
    [
      'require wait 10 min, since disconnect battery-negative',
      'rule clauses=[(require wait=<10 min>), (since pattern=(verbs=[disconnect] target=(form=names names=[battery-negative])))]',
    ],
    [
      'every remove or lift any part over 25 kg',
      'rule clauses=[(every pattern=(verbs=[remove, lift] target=(form=any kind=part over=<25 kg>)))]',
    ],
    ['needs with hoist', 'rule clauses=[(needs clause=(with items=[hoist]))]'],
    [
      'while battery-negative not connected',
      'rule clauses=[(while state=(target=(form=names names=[battery-negative]) not=true state=connected))]',
    ],
    ['while ignition on', 'rule clauses=[(while state=(target=(form=names names=[ignition]) state=on))]'],
    [
      'while any temporary placed',
      'rule clauses=[(while state=(target=(form=any kind=temporary) state=placed))]',
    ],
    ['require hold, before next', 'rule clauses=[(require message=hold), (before until=next)]'],
    ['require warning', 'rule clauses=[(require message=warning)]'],
    ['require cap it', 'rule clauses=[(require pattern=(verbs=[cap] target=(form=it)))]'],
    ['never move vehicle', 'rule clauses=[(never pattern=(verbs=[move] target=(form=vehicle)))]'],
    ['at most once', 'rule clauses=[(at most once)]'],
    ['before step ends', 'rule clauses=[(before until=step ends)]'],
  ])('%s', (code, row) => expect(rule(code)).toBe(row));
});

test('references in text carry name, attribute and number with their places', () => {
  const text =
    'procedure A-1: T\nremoval\n  step: S\n    note: To {hub-bolt torque 2} or {oil fill after}, not \\{x}.';
  const { tree, findings } = parse(text, 'a.bay');
  let note: Line | undefined;
  walkLines(tree, (line) => {
    note = line;
    return undefined;
  });
  expect(findings).toEqual([]);
  expect(
    note?.prose?.references.map(({ name, attribute, index, start, end }) => [
      name.text,
      attribute?.text,
      index,
      text.slice(start, end),
    ]),
  ).toEqual([
    ['hub-bolt', 'torque', 2, '{hub-bolt torque 2}'],
    ['oil', 'fill after', undefined, '{oil fill after}'],
  ]);
});
