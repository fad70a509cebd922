// Q: quantities as workshops write them, right and wrong. Each text stands for one line of a procedure or entry.
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../language/src/diagnostics/define.js';
import { bindFile } from '../../language/src/names/bind.js';
import { clausesOf } from '../../language/src/names/model.js';
import { numberOf, toSI } from '../../language/src/quantity/index.js';
import { parse } from '../../language/src/syntax/index.js';
import { afterFix, checkMarked, findingsOf, readMarked } from '../suite-helper.js';
import { checkOnly } from './only.js';

const onlyQ = (files: ReadonlyMap<string, string>): Finding[] =>
  findingsOf(files).filter((f) => f.code.startsWith('Q'));

/** A catalogue with one entry of each kind; the lines asked for replace the usual ones. */
function catalogue(lines: { bolt?: string; oil?: string; limit?: string; part?: string }): string {
  return `catalogue: Hub

sources
  HL-114: Hub sheet

parts
  hub: Hub
    ${lines.part ?? 'mass 6.2 kg'}

fasteners
  hub-bolt: Hub bolts
    4 of M12x1.5, class 10.9, hex 18 mm
    ${lines.bolt ?? 'torque 115 N·m, per "HL-114"'}

fluids
  gearbox-oil: Gearbox oil
    SAE 75W-90
    ${lines.oil ?? 'fill 1.9 L, per "HL-114"'}

limits
  disc-thickness: Disc thickness
    ${lines.limit ?? 'at least 22.0 mm, per "HL-114"'}
`;
}

function work(lines: string): string {
  return `procedure A-1: Hub, look at

use "hub.bay"

inspection
  step: Look at the hub
${lines}
--- file: hub.bay
${catalogue({})}`;
}

/** The findings of a text without marks: code and message, and the titles of their fixes. */
function told(text: string): string[] {
  return onlyQ(readMarked(text).files).map(
    (f) => `${f.code} ${f.message}${f.fixes.map((fix) => ` / ${fix.title}`).join('')}`,
  );
}

describe('what books print is right', () => {
  test.each([
    'torque 115 N·m',
    'torque 115 Nm',
    'torque 85 ft-lb',
    'torque 85 lb-ft',
    'torque 85 in·lbf',
    'torque 11.5 kgm',
    'torque 115 ±10 N·m',
    'torque 115 N·m ±5 %',
    'torque 115 +10/-5 N·m',
    'torque 105 to 115 N·m',
    'torque 105-115 N·m',
    'torque at least 100 N·m',
    'torque 60 N·m then 90°',
    'torque 15 then 40 ft·lbf',
    'torque 15 then 40 ft·lbf then 90°',
    'torque 20 N·m then back 180° then 20 N·m then 1/4 turn',
    'length 1 1/2 in, torque 115 N·m',
    'length 4½ in, torque 115 N·m',
  ])('%s', (bolt) => {
    expect(told(catalogue({ bolt: `${bolt}, per "HL-114"` }))).toEqual([]);
  });

  test.each([
    'fill 1.9 L',
    'fill 2 US qt',
    'fill 2 qt',
    'fill 17 US pt',
    'fill 450 g',
    'fill 1900 mL',
    'fill 1.8 to 2.0 L',
    'fill 12 fl oz',
  ])('%s', (oil) => {
    expect(told(catalogue({ oil }))).toEqual([]);
  });

  test.each(['mass 31 lb', 'mass 14 300 lb', 'mass 2 lb 3 oz', 'mass 8 oz', 'mass 6.2 kg'])('%s', (part) => {
    expect(told(catalogue({ part }))).toEqual([]);
  });

  test.each([
    '0.05 to 0.15°',
    '0.05 ±0.10°',
    '402 ±5 mm',
    '-10 to 40 °C',
    '0.006 to 0.012 in',
    'at least 22.0 mm, new 24.0 mm',
    '2.2 bar',
    '12.4 to 12.8 V',
  ])('%s', (limit) => {
    expect(told(catalogue({ limit }))).toEqual([]);
  });

  test.each([
    'wait 1 h 40 min',
    'wait 90 s',
    'loosen hub-bolt, 1/2 turn\n    torque hub-bolt',
    'inflate hub, 35 psi',
    'recheck hub-bolt, after 80 km',
    'heat hub to 90 °C with hub-heater',
    'road-test vehicle, 5 km',
    'run engine, 5 min at 1500 rpm',
    'measure disc-thickness, at 4 places',
    'pump hub, 10 times',
  ])('%s', (line) => {
    expect(told(work(`    ${line}`))).toEqual([]);
  });
});

describe('each slip has its own message and its own fixes', () => {
  test.each([
    [
      'torque 115 psi',
      'Q102 115 psi is a pressure; here goes a torque or an angle / Write `115 N·m` / Write `115 ft·lbf` / Write `115 in·lbf` / Write `115°`',
    ],
    [
      'torque 85 lb',
      'Q103 `lb` can be foot-pounds, a torque or inch-pounds, a torque / Write `85 ft·lbf` / Write `85 in·lbf`',
    ],
    [
      'torque 40 then 60 lb',
      'Q103 `lb` can be foot-pounds, a torque or inch-pounds, a torque / Write `60 ft·lbf` / Write `60 in·lbf`',
    ],
    [
      'torque 115 nm',
      'Q104 `nm` is read as N·m here, but also stands for nanometres, a length / Write `115 N·m`',
    ],
    [
      'torque 115',
      'Q105 115 has no unit; here goes a torque or an angle / Write `115 N·m` / Write `115 ft·lbf` / Write `115 in·lbf` / Write `115°`',
    ],
    [
      'torque 60 then 90°',
      'Q105 60 has no unit; here goes a torque or an angle / Write `60 N·m` / Write `60 ft·lbf` / Write `60 in·lbf` / Write `60°`',
    ],
    ['torque 11,5 N·m', 'Q106 the comma in 11,5 can be misread; write 11.5 / Write `11.5`'],
    [
      'torque 1,150 N·m',
      'Q106 the comma in 1,150 can be misread; write 1150 or 1.150 / Write `1150` / Write `1.150`',
    ],
    ['torque 115 Nmn', 'Q101 `Nmn` is not a unit / Write `115 N·m`'],
    [
      'torque 115 zorks',
      'Q101 `zorks` is not a unit / Write `115 N·m` / Write `115 ft·lbf` / Write `115 in·lbf` / Write `115°`',
    ],
    ['torque 115 to 105 N·m', 'Q110 the range runs backwards: 115 is more than 105 / Write `105 to 115 N·m`'],
    [
      'torque 115 J',
      'Q102 115 J is an energy; here goes a torque or an angle / Write `115 N·m` / Write `115 ft·lbf` / Write `115 in·lbf` / Write `115°`',
    ],
    [
      'torque 115 -5/+10 N·m',
      'Q108 the tolerance -5/+10 stands the wrong way round; write +10/-5 / Write `+10/-5`',
    ],
  ])('%s', (bolt, expected) => {
    expect(told(catalogue({ bolt: `${bolt}, per "HL-114"` }))).toEqual([expected]);
  });

  test.each([
    [
      'fill 1.9 N·m',
      'Q102 1.9 N·m is a torque; here goes a volume or a mass / Write `1.9 L` / Write `1.9 mL` / Write `1.9 US gal` / Write `1.9 US qt` / Write `1.9 kg`',
    ],
    ['fill 2 gal', 'Q103 `gal` can be US gallons or imperial gallons / Write `2 US gal` / Write `2 imp gal`'],
    ['fill 0,5 L', 'Q106 the comma in 0,5 can be misread; write 0.5 / Write `0.5`'],
    ['fill 1900 L', 'Q117 1900 L is hardly a fill of fluid'],
    [
      'fill 12 oz',
      'Q103 `oz` can be ounces, a mass; US fluid ounces, a volume or imperial fluid ounces, a volume / Write `12 oz av` / Write `12 US fl oz` / Write `12 imp fl oz`',
    ],
  ])('%s', (oil, expected) => {
    expect(told(catalogue({ oil }))).toEqual([expected]);
  });

  test('a figure in the step that is another than the entry’s', () => {
    expect(told(work('    torque hub-bolt, 115 in-lb'))).toEqual([
      'Q118 115 in-lb here, but the torque of `hub-bolt` is 115 N·m: one number with two units / Leave the figure out here',
    ]);
    expect(told(work('    torque hub-bolt, 85 ft·lbf'))).toEqual([]);
    expect(told(work('    torque hub-bolt, 90 N·m'))).toEqual([
      'Q118 90 N·m here, but the torque of `hub-bolt` is 115 N·m / Leave the figure out here',
    ]);
  });

  test('a first fill is less than the whole where more goes in later', () => {
    const rest = '\n    top-up gearbox-oil until level at fill-plug';
    expect(told(work(`    fill gearbox-oil, 1.5 L${rest}`))).toEqual([]);
    expect(told(work('    fill gearbox-oil, 1.5 L')).join()).toContain('Q118');
    for (const slip of [rest.replace('top-up', 'topup'), rest.replace('oil', 'oli')])
      expect(told(work(`    fill gearbox-oil, 1.5 L${slip}`)).join()).not.toContain('Q118');
    expect(told(work(`    fill gearbox-oil, 2.5 L${rest}`)).join()).toContain('Q118');
  });

  test('a first fill is a question until the end of a draft', () => {
    const text = (status: string, end: string) =>
      work('    fill gearbox-oil, 1.5 L')
        .replace(/^(procedure .+)$/m, `$1\n\nstatus ${status}`)
        .trimEnd() + end;
    const of = (status: string, end: string) =>
      findingsOf(new Map([['a.bay', text(status, end)]])).flatMap(({ code, severity }) =>
        code === 'Q118' ? [severity] : [],
      );
    const completion = '\n\ncompletion\n  step: Hand over\n    do: Hand the keys over.\n';
    expect(of('draft', '\n')).toEqual(['question']);
    expect(of('draft', completion)).toEqual(['error']);
    expect(of('proved by RB on 2026-10-05', '\n')).toEqual(['error']);
  });

  test.each([
    ["0°05' to 0°10'", 5 / 60, 10 / 60],
    ["-0°30' to 0°30'", -0.5, 0.5],
    ["0°10' ±0°05'", 5 / 60, 15 / 60],
    ["-1°30' ±45'", -2.25, -0.75],
  ])('degrees and minutes are one figure: %s', (written, low, high) => {
    const { things } = bindFile('main.bay', parse(catalogue({ limit: written }), 'main.bay').tree);
    const limit = things.find((thing) => thing.kind === 'limit');
    const measured = limit && clausesOf(limit, 'bare')[0]?.clause.spec?.stages[0]?.measure.measure;
    const ends = measured && toSI(measured);
    expect([ends?.low && numberOf(ends.low), ends?.high && numberOf(ends.high)]).toEqual([
      expect.closeTo(low, 9),
      expect.closeTo(high, 9),
    ]);
  });

  test('a doubtful unit is settled at both ends of a range', () => {
    const [found] = findingsOf(readMarked(catalogue({ limit: "5' to 10'" })).files);
    expect(found?.fixes.map((fix) => fix.title)).toEqual(['Write `5ft to 10ft`', 'Write `5′ to 10′`']);
  });

  test('a figure that would be ordinary in another unit', () => {
    const wheel = `catalogue: Wheel

parts
  wheel: Road wheel
    held by wheel-bolt
    marked wheel

fasteners
  wheel-bolt: Wheel bolts
    4 of M12x1.5, hex 17 mm
    torque 110 in-lb, per ?
`;
    const [found] = findingsOf(readMarked(wheel).files).filter((f) => f.code === 'Q117');
    expect(found?.advice).toContain('; 110 N·m or 110 ft·lbf would be ordinary');
  });

  test('a limit in millimetres and inches', () => {
    checkMarked(
      catalogue({
        limit: `at most 204.5 in, new 203.0 mm, per "HL-114"
#                         ^^^^^^^^ Q112 the limit has two units, in and mm`,
      }),
      onlyQ,
    );
  });

  test('a number of things is no figure', () => {
    expect(told(work('    remove 6 bolts'))).toEqual(['Q101 `bolts` is not a unit / Write `6 of bolts`']);
    const all = findingsOf(readMarked(work('    remove 6 bolts\n    clean hub with 6 rags')).files);
    expect(all.map(({ code }) => code)).toEqual(['Q101', 'N213']);
  });

  test('a count is no slip for a measure', () => {
    const [clicks] = findingsOf(readMarked(work('    press hub, 4 clicks')).files).filter(
      (f) => f.code === 'Q102',
    );
    expect(clicks?.fixes).toEqual([]);
  });

  test('one finding for a figure, whatever else follows from it', () => {
    const codes = findingsOf(readMarked(catalogue({ bolt: 'torque 115 psi, per "HL-114"' })).files).map(
      (f) => f.code,
    );
    expect(codes).toEqual(['Q102']);
  });

  test('figures in statements', () => {
    checkMarked(
      work(`    wait 10
#        ^^ Q105 10 has no unit; here goes a time
    recheck hub-bolt, after 80 kg
#                           ^^^^^ Q102 80 kg is a mass
    road-test vehicle, 5 M
#                        ^ Q103 metres, a length
    wait 1 h 40
#        ^^^^^^ Q105`),
      onlyQ,
    );
  });
});

describe('holes are questions', () => {
  test('every hole once, with what is asked', () => {
    expect(told('procedure ?: Hub, look at\n\nlabour ?\n')).toEqual([
      'Q120 the number of the procedure is not known yet',
      'Q120 the labour time is not known yet',
    ]);
    expect(
      told(catalogue({ bolt: 'torque ? then 90°, per ?', oil: 'fill ? L', limit: 'at least ?' })),
    ).toEqual([
      'Q120 the torque of `hub-bolt` is not known yet',
      'Q120 the source of `hub-bolt` is not known yet',
      'Q120 the fill of `gearbox-oil` is not known yet',
      'Q120 the lower limit of `disc-thickness` is not known yet',
    ]);
  });
});

describe('figures in the text', () => {
  test('a torque is a second copy, a time is not', () => {
    expect(told(work('    torque hub-bolt: Stop at 115 N·m.'))).toEqual([
      'Q119 115 N·m stands in the text a second time; write {hub-bolt torque} / Write {hub-bolt torque}',
    ]);
    expect(told(work('    torque hub-bolt: Hold for 30 s. Keep 4 mm away.'))).toEqual([]);
    expect(told(work('    clean hub: The nut takes 20 N·m.'))).toEqual([
      'Q119 20 N·m stands in the text, where nothing checks it',
    ]);
  });
});

test('every fix that changes a figure leaves one that is understood', () => {
  for (const bolt of [
    'torque 115 psi',
    'torque 85 lb',
    'torque 115',
    'torque 1,150 N·m',
    'torque 115 nm',
    'torque 115 Nmn',
  ]) {
    const { files } = readMarked(catalogue({ bolt: `${bolt}, per "HL-114"` }));
    for (const fix of onlyQ(files).flatMap((f) => f.fixes)) {
      const left = onlyQ(afterFix(files, fix.edits)).filter((f) => f.code !== 'Q117');
      expect(
        left.map((f) => f.message),
        fix.title,
      ).toEqual([]);
    }
  }
});

describe('trouble codes', () => {
  const job = (title: string, lines: string) => `procedure A-1: ${title}

tools
  code-reader: Code reader

inspection
  step: Look
${lines}
`;
  test.each([
    ['codes of every system', job('Look', '    scan vehicle: P0301, C1A2B, B1234-1F and U0100.')],
    ['a part number elsewhere', job('Look', '    clean code-reader: Not PO301.')],
    ['a title that speaks of no code', job('Bracket B9999, fit', '    clean code-reader')],
    ['letters alone', job('Look', '    read codes: The BOLD ones.')],
    [
      'a figure that no code has second',
      job('Look', '    read codes: P9301 at most.\n#               ^^^^^ Q121 0 to 3'),
    ],
    ['a title', job('Code P03O1, find the cause\n#                   ^^^^^ Q121', '    clean code-reader')],
  ])('%s', (_, text) => {
    checkOnly(text, 'Q121');
  });
});

test.each([
  ['at least 22.0 mm, new 24.0 mm', ''],
  ['at least 22.0 mm, new 20.0 mm', 'Q122 a new part with 20.0 mm is below'],
  ['at least 22.0 mm, new 24.0 ±0.1 mm', ''],
  ['at most 0.05 mm, new 0.01 mm', ''],
  ['at most 0.05 mm, new 0.10 mm', 'Q122 a new part with 0.10 mm is above'],
  ['22.0 to 24.0 mm, new 24.0 mm', ''],
  ['22.0 ±0.5 mm, new 23 mm', 'Q122 a new part with 23 mm is above'],
  ['at least 22.0 mm, when axle light, new 20.0 mm', ''],
])('a limit and its new part: %s', (limit, expected) => {
  const found = findingsOf(new Map([['a.bay', catalogue({ limit: `${limit}, per "HL-114"` })]]));
  expect(found.filter(({ code }) => code === 'Q122').map((f) => `${f.code} ${f.message}`)).toEqual(
    expected === '' ? [] : [expect.stringContaining(expected)],
  );
});

test.each([
  ['at most 1 mm', 'above limit', ''],
  ['at most 1 mm', 'outside limit', ''],
  ['at most 1 mm', 'below limit', '`gap` has no lower limit, so this is never done'],
  ['at least 1 mm', 'above limit', '`gap` has no upper limit, so this is never done'],
  ['1 to 2 mm', 'below limit', ''],
  ['at most ?', 'above limit', ''],
  ['per "HL-114"', 'outside limit', '`gap` says no figure to hold a reading against'],
])('a limit of %s and `if %s`', (limit, asked, expected) => {
  const text = `procedure A-1: Gap\n\nlimits\n  gap: Gap\n    ${limit}\n\ninspection\n  step: Look\n    measure gap\n      if ${asked}\n        note: Write it down.\n`;
  const found = findingsOf(new Map([['a.bay', text]])).filter(({ code }) => code === 'Q123');
  expect(found.map(({ message }) => message)).toEqual(expected === '' ? [] : [expected]);
});

test.each([
  ['4 M12x1.5, class 10.9', '4 of M12x1.5, class 10.9'],
  ['4xM12x1.5, class 10.9', '4 of M12x1.5, class 10.9'],
])('a set written as %s', (line, mended) => {
  const text = catalogue({}).replace('4 of M12x1.5, class 10.9', line);
  const [found, ...more] = findingsOf(new Map([['a.bay', text]]));
  expect([found?.code, more.map(({ code }) => code)]).toEqual(['Q101', []]);
  expect(found?.advice).toBe('a set says how many `of` what: `4 of M12x1.5`');
  const [fix] = found?.fixes ?? [];
  expect(fix && afterFix(new Map([['a.bay', text]]), fix.edits).get('a.bay')).toBe(
    catalogue({}).replace('4 of M12x1.5, class 10.9', mended),
  );
});

test('a bound behind a figure is no unit, and where anything is measured none is put in unasked', () => {
  const text = (figure: string) => `catalogue: Gaps\n\nlimits\n  gap: Gap\n    ${figure}\n`;
  const of = (figure: string) => findingsOf(new Map([['a.bay', text(figure)]]))[0];
  expect(of('.030 max')?.advice).toMatch(/`at most \.030`/);
  expect(of('.030 max')?.fixes.map(({ edits }) => edits[0]?.text)).toEqual(['at most .030']);
  expect(of('at most 12 psj')?.fixes.some(({ preferred }) => preferred)).toBe(false);
});
