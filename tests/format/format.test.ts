// What the formatter settles and what it keeps, by example: before and after.
import { describe, expect, test } from 'vitest';
import { format, formatRange } from '../../language/src/format/index.js';

/** The lines of an entry or step after formatting, its head left out. */
const tidy = (text: string) => format(text, 'a.bay').text;
const inStep = (code: string) => `procedure A-1: T\n\nremoval\n  step: S\n${code}`;
const inEntry = (code: string, section = 'fasteners') =>
  `procedure A-1: T\n\n${section}\n  thing: Thing\n${code}`;
const stepLine = (code: string) =>
  tidy(inStep(`    ${code}`))
    .split('\n')
    .slice(4, -1)
    .join('\n')
    .trim();
const entryLine = (code: string, section?: string) =>
  tidy(inEntry(`    ${code}`, section))
    .split('\n')
    .slice(4, -1)
    .join('\n')
    .trim();

describe('code', () => {
  test.each([
    ['remove   wheel-nut ,wheel', 'remove wheel-nut, wheel'],
    ['remove cap, with bar', 'remove cap with bar'],
    ['raise vehicle with jack at sill-points', 'raise vehicle with jack at sill-points'],
    ['loosen wheel-nut 1/2 turn', 'loosen wheel-nut, 1/2 turn'],
    ['fill oil, 2 qt US, until level at mark', 'fill oil, 2 US qt, until level at mark'],
    ['fill oil until level at mark', 'fill oil until level at mark'],
    ['connect link when axle heavy, at hub', 'connect link at hub, when axle heavy'],
    ['wait  10min  since disconnect battery-negative', 'wait 10 min, since disconnect battery-negative'],
    ['torque bolt per HL-114, stage 1', 'torque bolt, per "HL-114", stage 1'],
    ['remove 2  of bolt', 'remove 2 of bolt'],
    ['wait 10 min:Cool it.', 'wait 10 min: Cool it.'],
    [
      'perform off from WH-01 side left when axle heavy',
      'perform off from WH-01, side left, when axle heavy',
    ],
  ])('%s', (before, after) => expect(stepLine(before)).toBe(after));

  test.each([
    ['hex 18mm, 4 of M12x1.5, class 10.9', '4 of M12x1.5, class 10.9, hex 18 mm'],
    ['torque 85 in-lb per HL-114', 'torque 85 in·lbf, per "HL-114"'],
    ['torque 105-115 Nm', 'torque 105 to 115 N·m'],
    ['torque 115 +/- 10 Nm', 'torque 115 ±10 N·m'],
    ['torque 15 then 40 ft·lbf', 'torque 15 ft·lbf then 40 ft·lbf'],
    ['torque 20 Nm, when axle heavy, dry', 'torque 20 N·m, dry, when axle heavy'],
    ['square 3/4"', 'square 3/4 in'],
  ])('%s', (before, after) => expect(entryLine(before)).toBe(after));

  test.each([
    ['0°05′  to 0°10′', '0°05′ to 0°10′'],
    ['0°10′ ± 5′', '0°10′ ±5′'],
    ['-0°30′', '-0°30′'],
    ['5′ to 10′', '5 to 10′'],
    // `oz` alone would be asked about again.
    ['4 oz av', '4 oz av'],
  ])('%s', (before, after) => expect(entryLine(before, 'limits')).toBe(after));

  test('what is still open stays as written', () => {
    for (const open of ['torque ?', 'torque 1,5 N·m', 'torque 20', 'length 3 smoots', 'per ?'])
      expect(entryLine(open)).toBe(open);
  });

  test('a line break after a comma stays, two levels in', () => {
    expect(tidy(inStep('    remove wheel-nut,\n     wheel with bar:\n     Both.'))).toBe(
      inStep('    remove wheel-nut,\n        wheel with bar:\n      Both.\n'),
    );
  });

  test('rules, guards and events', () => {
    expect(entryLine('after  remove  or loosen any part marked wheel , require wait 10min', 'rules')).toBe(
      'after remove or loosen any part marked wheel, require wait 10 min',
    );
    expect(tidy('procedure A-1: T\nlabour 1h 40min,when engine petrol  or diesel')).toBe(
      'procedure A-1: T\nlabour 1 h 40 min, when engine petrol or diesel\n',
    );
  });
});

describe('layout', () => {
  test('two spaces a level, tabs and all', () => {
    expect(tidy('procedure A-1: T\n\nparts\n\tcap: Cap\n\t\trenew\n')).toBe(
      'procedure A-1: T\n\nparts\n  cap: Cap\n    renew\n',
    );
  });

  test('sections are parted, blank lines are one, the last line ends', () => {
    expect(tidy('\n\nprocedure A-1: T\nparts\n\n  cap: Cap\n\n\n\nremoval\n  step: S\n\n')).toBe(
      'procedure A-1: T\n\nparts\n  cap: Cap\n\nremoval\n  step: S\n',
    );
  });

  test('comments stay with their line', () => {
    expect(tidy('procedure A-1: T\n\nparts\n    # the cap\n    cap: Cap\n      # sealed\n')).toBe(
      'procedure A-1: T\n\nparts\n  # the cap\n  cap: Cap\n  # sealed\n',
    );
  });

  test('text below keeps its lines, its paragraphs and its lists', () => {
    expect(tidy(inStep('    caution:\n         Hot.\n\n\n         - oil\n           and more\n'))).toBe(
      inStep('    caution:\n      Hot.\n\n\n      - oil\n        and more\n'),
    );
  });

  test('text that starts on the line and goes on below moves below', () => {
    expect(tidy(inStep('    note: One.\n          Two.\n'))).toBe(
      inStep('    note:\n      One.\n      Two.\n'),
    );
  });

  test('a comment between text that moves below and its next line stands with the text', () => {
    const once = tidy(inStep('    note: One.\n    # why\n          Two.\n'));
    expect(once).toBe(inStep('    note:\n      One.\n      # why\n      Two.\n'));
    expect(tidy(once)).toBe(once);
  });

  test('line ends stay what they are', () => {
    expect(tidy('procedure A-1: T\r\nparts\r\n')).toBe('procedure A-1: T\r\n\r\nparts\r\n');
  });
});

test('a line with a finding of its own stays, moved with its block', () => {
  expect(
    tidy(
      'procedure A-1: T\n\nremoval\n    step: S\n        remove   cap lid ,bar\n        dismantle   it\n            all   below\n',
    ),
  ).toBe(
    'procedure A-1: T\n\nremoval\n  step: S\n    remove   cap lid ,bar\n    dismantle   it\n      all   below\n',
  );
});

describe('edits', () => {
  test('touch changed lines only', () => {
    const text = inStep('    remove  cap\n    remove lid\n');
    const { edits } = format(text, 'a.bay');
    expect(edits.map(({ span, text: wanted }) => [text.slice(span.start, span.end), wanted])).toEqual([
      ['    remove  cap', '    remove cap'],
    ]);
  });

  test('of a range touch its lines only', () => {
    const text = inStep('    remove  cap\n    remove  lid\n');
    const start = text.indexOf('remove  lid');
    expect(formatRange(text, 'a.bay', { start, end: start }).map(({ text: wanted }) => wanted)).toEqual([
      '    remove lid',
    ]);
  });
});
