// Slips on a line: what is said, where, and that one slip gives one finding.
import { describe, expect, test } from 'vitest';
import { checkMarked } from '../suite-helper.js';
import { applyFix, dumpOf, findingsOf } from './read.js';

const check = (text: string) => checkMarked(text, findingsOf);
const foundIn = (text: string) => findingsOf(new Map([['a.bay', text]]));
const inStep = (code: string) => `procedure A-1: T\nremoval\n  step: S\n${code}`;
const inFastener = (code: string) => `procedure A-1: T\nfasteners\n  bolt: Bolt\n${code}`;

describe('the first word', () => {
  test('one letter off is read as the word that was meant', () => {
    check(
      inStep(
        '    remvoe cap\n#   ^^^^^^ G201 `remvoe` is read as `remove`\n      rejct: dents\n#     ^^^^^ G201 read as `reject`',
      ),
    );
    expect(dumpOf(inStep('    remvoe cap'))).toContain('statement verb=remove items=[cap] broken');
  });

  test('of two words', () => {
    check(
      inFastener('    hex 10 mm\n    unil level at edge\n#   ^^^^^^^^^^^^^ G201 read as `until level at`'),
    );
  });

  test('a capital is a slip only of itself', () => {
    check(inStep('    Remove cap\n#   ^^^^^^ G201 read as `remove`'));
    check(
      inStep(
        '    wait 1 h\n      Then go on.\n#     ^^^^ G201 `Then` is not a word that opens a line under a statement',
      ),
    );
  });

  test('what shops say for a verb is that verb, before words that only look like it', () => {
    check(inStep('    check lid\n#   ^^^^^ G201 `check` is read as `inspect`\n      reject: dents'));
    check(inStep('    grease rail\n#   ^^^^^^ G201 `grease` is read as `lubricate`'));
    check(inStep('    start engine, 5 min\n#   ^^^^^ G201 `start` is read as `run`'));
    check(inStep('    hook cable to lever\n#   ^^^^ G201 `hook` is read as `connect`'));
  });

  test('what shops say for a clause of an entry is that clause, whatever it looks like', () => {
    const inLimit = (code: string) => `procedure A-1: T\nlimits\n  gap: Gap\n${code}`;
    const [most] = check(inLimit('    max 15 psi, per "HY-7"\n#   ^^^ G201 `max` is read as `at most`'));
    expect(most?.fixes[0] && applyFix(inLimit('    max 15 psi, per "HY-7"'), most.fixes[0])).toBe(
      inLimit('    at most 15 psi, per "HY-7"'),
    );
    expect(dumpOf(inLimit('    max 15 psi'))).toContain('(at most spec=[(measure=<at most 15 psi>)])');
    const [behind] = check(inLimit('    0.010 in max, per "HY-7"\n#            ^^^ G203'));
    expect(behind?.fixes[0] && applyFix(inLimit('    0.010 in max, per "HY-7"'), behind.fixes[0])).toBe(
      inLimit('    at most 0.010 in, per "HY-7"'),
    );
    check(inLimit('    min 2 mm\n#   ^^^ G201 `min` is read as `at least`'));
    const inPart = (code: string) => `procedure A-1: T\nparts\n  shaft: Shaft\n${code}`;
    check(inPart('    weight 28 lb\n#   ^^^^^^ G201 `weight` is read as `mass`'));
  });

  test('a verb of two words without its hyphen, before one of its words is read as another verb', () => {
    check(inStep('    check level axle-oil\n#   ^^^^^^^^^^^ G201 `check level` is read as `check-level`'));
    check(inStep('    push back piston\n#   ^^^^^^^^^ G201 `push back` is read as `push-back`'));
    check(inStep('    road test vehicle, 5 mi\n#   ^^^^^^^^^ G201 `road test` is read as `road-test`'));
    check(inStep('    take off cover\n#   ^^^^^^^^ G201 `take off` is read as `remove`'));
    check(inStep('    check level\n#   ^^^^^ G201 `check` is read as `inspect`'));
  });

  test('a word that only joins names is not in a longer one', () => {
    const [found] = check(inStep('    install bolt hand tight\n#                ^^^^ G203'));
    expect(found?.advice).toBe('it goes in by hand until a line says `snug`, `tighten` or `torque`');
    expect(found?.fixes.map((fix) => applyFix(inStep('    install bolt hand tight'), fix))).toEqual([
      inStep('    install bolt'),
    ]);
  });

  test('the size of a head in front of the word for it', () => {
    const [found] = check(inFastener('    4 of 3/8-16, 9/16" head\n#                      ^^^^ G203'));
    expect(found?.fixes.map((fix) => applyFix(inFastener('    4 of 3/8-16, 9/16" head'), fix))).toEqual([
      inFastener('    4 of 3/8-16, hex 9/16"'),
    ]);
  });

  test('the size of a hexagon in front of its word', () => {
    const [found] = check(inFastener('    4 of 3/8-16, 9/16 hex\n#                     ^^^ G204'));
    expect(found?.advice).toBe('did you mean `hex 9/16`?');
    expect(found?.fixes.map((fix) => applyFix(inFastener('    4 of 3/8-16, 9/16 hex'), fix))).toEqual([
      inFastener('    4 of 3/8-16, hex 9/16'),
    ]);
  });

  test('a verb with a word behind it that another verb is said by', () => {
    const [found] = check(inStep('    press off bearing\n#             ^^^^^^^ G203'));
    expect(found?.advice).toBe('did you mean `remove bearing`?');
    expect(found?.fixes.map((fix) => applyFix(inStep('    press off bearing'), fix))).toEqual([
      inStep('    remove bearing'),
    ]);
  });

  test('years and options of the vehicle that a procedure applies to', () => {
    const head = (code: string) => `procedure A-1: T\napplies to ${code}\n`;
    const mended = (code: string) => {
      const [found] = foundIn(head(code));
      return found?.fixes.map((fix) => applyFix(head(code), fix));
    };
    expect(mended('van 2016-2024')).toEqual([head('van from 2016 to 2024')]);
    expect(mended('van 2019')).toEqual([head('van from 2019 to 2019'), head('van from 2019')]);
    expect(mended('van from 2016 to 2024, axle heavy')).toEqual([
      head('van from 2016 to 2024, when axle heavy'),
    ]);
  });

  test('what shops say for an outcome is asked about at once, and mended where it is all that is said', () => {
    const inTest = (code: string) => inStep(`    measure gap\n      ${code}\n        stop: No.`);
    for (const [said, meant] of [
      ['over limit', 'above limit'],
      ['under', 'below limit'],
      ['out of spec', 'outside limit'],
      ['worn', 'rejected'],
    ]) {
      const text = inTest(`if ${said}`);
      const [found] = foundIn(text);
      expect(found?.code).toBe('G204');
      expect(found?.fixes[0] && applyFix(text, found.fixes[0])).toBe(inTest(`if ${meant}`));
    }
    const [more] = foundIn(inTest('if over limit then replace shaft'));
    expect(more?.advice).toMatch(/^did you mean `above limit`\?/);
    expect(more?.fixes).toEqual([]);
    expect(foundIn(inTest('if above limit'))).toEqual([]);
  });

  test('stages parted by a comma', () => {
    const [stages] = check(inFastener('    torque 25 N·m, then 45°\n#                  ^^^^ G203'));
    expect(stages?.advice).toBe('stages follow each other without a comma: `25 N·m then 45°`');
    expect(stages?.fixes[0] && applyFix(inFastener('    torque 25 N·m, then 45°'), stages.fixes[0])).toBe(
      inFastener('    torque 25 N·m then 45°'),
    );
    const [order] = check(inStep('    remove cap, then lid\n#               ^^^^ G203'));
    expect(order?.advice).toBe('text for the technician goes after a colon');
  });

  test('all in capitals', () => {
    check(inStep('    WARNING: Hot.\n#   ^^^^^^^ G201 `WARNING` is read as `warning`'));
    check(inStep('    REMOVE cap\n#   ^^^^^^ G201 read as `remove`'));
  });

  test('a condition alone is offered `set`, and any other words a line of plain text', () => {
    const [condition] = check(inStep('    key off\n#   ^^^ G201'));
    expect(condition?.advice).toBe('did you mean `set key`?');
    const [plain] = check(inStep('    open hood, wide\n#   ^^^^ G201'));
    expect(plain?.advice).toBe('what the checker need not follow goes in plain words: `do: Open hood, wide`');
    expect(plain?.fixes[0] && applyFix(inStep('    open hood, wide'), plain.fixes[0])).toBe(
      inStep('    do: Open hood, wide'),
    );
    check(inStep('    Note that it drips: look.\n#   ^^^^ G201'));
  });

  test('words that the checker cannot follow may have text of their own', () => {
    const [plain] = check(inStep('    dry-fit glass: Set the gap.\n#   ^^^^^^^ G201'));
    expect(plain?.fixes[0] && applyFix(inStep('    dry-fit glass: Set the gap.'), plain.fixes[0])).toBe(
      inStep('    do: Dry-fit glass: Set the gap.'),
    );
  });

  test('a clause of two words begun and gone on with another word', () => {
    const cover = (code: string) => `procedure A-1: T\nparts\n  cover: Cover\n${code}`;
    const [begun] = check(cover('    sealed by gasket\n#   ^^^^^^ G201'));
    expect(begun?.fixes[0] && applyFix(cover('    sealed by gasket'), begun.fixes[0])).toBe(
      cover('    sealed with gasket'),
    );
  });

  test.each([
    ['> 1 MΩ', 'at least 1 MΩ'],
    ['>= 1 MΩ', 'at least 1 MΩ'],
    ['≤ 35 N·m', 'at most 35 N·m'],
    ['<3 mm', 'at most 3 mm'],
  ])('the sign of a limit: %s', (typed, meant) => {
    const limit = (code: string) => `procedure A-1: T\nlimits\n  value: Value\n    ${code}`;
    const [sign] = findingsOf(new Map([['main.bay', limit(typed)]]));
    expect(sign?.fixes[0] && applyFix(limit(typed), sign.fixes[0])).toBe(limit(meant));
  });

  test('further off it is not read, nor is its block', () => {
    check(
      inStep(
        '    dismantle cap\n#   ^^^^^^^^^ G201 `dismantle` is not a word that opens a line in a step\n      all: below\n        goes',
      ),
    );
  });

  test('names that stand side by side are parted as they are written', () => {
    const text = inStep('    remove cap  clip');
    const [found] = findingsOf(new Map([['main.bay', text]])).filter(({ code }) => code === 'G203');
    expect(found?.fixes.map((fix) => applyFix(text, fix))).toEqual(
      ['cap-clip', 'cap, clip', 'cap: Clip'].map((line) => inStep(`    remove ${line}`)),
    );
  });

  test.each([
    ['remove cotter pin', 'remove cotter-pin'],
    ['pry off dust cap', 'remove dust-cap'],
    ['drive out seal', 'remove seal'],
    ['drive in cap', 'install cap'],
    ['pack bearing with grease', 'lubricate bearing with grease'],
    ['never spin a bearing with air', 'notice: Never spin a bearing with air'],
    ['let the engine cool', 'do: Let the engine cool'],
    ['turn hub by hand', 'turn hub'],
    ['inspect oil level', 'check-level oil'],
    ['remove cap, when engine 3-litre', 'remove cap, when engine e3-litre'],
    ['chock wheels on the other side', 'chock wheels: On the other side'],
  ])('what is said as %s is written %s', (said, written) => {
    const text = inStep(`    ${said}`);
    const [found] = findingsOf(new Map([['main.bay', text]])).filter(({ code }) => code.startsWith('G2'));
    expect(found?.fixes[0] && applyFix(text, found.fixes[0])).toBe(inStep(`    ${written}`));
  });

  test('to stop the engine does not end the job', () => {
    const text = inStep('    stop engine\n    note: Then go on.');
    const [found, ...others] = findingsOf(new Map([['main.bay', text]])).filter(({ code }) =>
      /^[GS]/.test(code),
    );
    expect([found?.advice, others]).toEqual(['`stop` ends the job; did you mean `do: Stop engine`?', []]);
    expect(found?.fixes[0] && applyFix(text, found.fixes[0])).toBe(
      inStep('    do: Stop engine\n    note: Then go on.'),
    );
  });

  test('a vehicle is called by a name', () => {
    const text = 'procedure A-1: T\n\napplies to Harrow T20, when axle heavy\n';
    const [found] = findingsOf(new Map([['main.bay', text]])).filter(({ code }) => code === 'G203');
    expect(found?.fixes[0] && applyFix(text, found.fixes[0])).toBe(text.replace('Harrow T20', 'harrow-t20'));
  });

  test('in the wrong place it is told where it goes', () => {
    check(inStep('    held by clip\n#   ^^^^^^^ G202 `held by` does not stand in a step'));
    check(inFastener('    remove bolt\n#   ^^^^^^ G202 `remove` does not stand under an entry'));
    check('procedure A-1: T\nstep: S\n# <<<< G202 `step` does not stand at the left edge');
    check('procedure A-1: T\nparts\n  renew\n# ^^^^^ G202');
    check('procedure A-1: T\nparts\n  fasteners\n# ^^^^^^^^^ G202');
  });

  test('work outside a step is read and reported', () => {
    check('procedure A-1: T\nremoval\n  remove cap\n# ^^^^^^ G112\n  step: S');
  });

  test('lines as on paper, at the left edge, are told where they go', () => {
    const [step, warning] = check(
      'procedure A-1: T\nStep 1: Wheels off\n# <<<< G202 `step`\nWARNING: Hot.\n# <<<<<<< G202 `warning`',
    );
    expect([step?.advice, warning?.advice]).toEqual([
      '`step` goes in a section of work, such as `removal`',
      '`warning` goes in a step',
    ]);
  });

  test('a name is made of the title where a clause word cannot be one', () => {
    const [found] = check('procedure A-1: T\nsupplies\n  cleaner: Brake cleaner\n# ^^^^^^^ G207');
    expect(found?.advice).toBe('write a longer name, such as `brake-cleaner`');
  });

  test('a clause word is no name', () => {
    check('procedure A-1: T\nsupplies\n  sealant: Sealant\n# ^^^^^^^ G207');
  });
});

describe('as people speak', () => {
  test.each([
    ['    remove cap and lid', 'and', '    remove cap, lid'],
    ['    remove the cap', 'the', '    remove cap'],
    ['    remove all cap', 'all', '    remove cap'],
    ['    - remove cap', '-', '    remove cap'],
    ['    1. remove cap', '1.', '    remove cap'],
    ['    remove cap until it clicks', 'until', '    remove cap: Until it clicks'],
    ['    install new cap', 'new', '    install cap'],
    ['  step 2: On', '2', '  step: On'],
  ])('%s', (line, word, mended) => {
    const text = inStep(line);
    const [found, ...more] = findingsOf(new Map([['a.bay', text]]));
    expect(more).toEqual([]);
    expect(text.slice(found?.span.start, found?.span.end)).toBe(word);
    const fix = found?.fixes.at(-1);
    expect(fix && applyFix(text, fix)).toBe(inStep(mended));
  });

  test.each([
    ['    2x M6x1.0, class 8.8', '    2 of M6x1.0, class 8.8'],
    ['    2 x M6x1.0, class 8.8', '    2 of M6x1.0, class 8.8'],
  ])('%s', (line, mended) => {
    const text = inFastener(line);
    const [found, ...more] = findingsOf(new Map([['a.bay', text]]));
    expect(more).toEqual([]);
    const fix = found?.fixes[0];
    expect(fix && applyFix(text, fix)).toBe(inFastener(mended));
  });

  test('`else` is `otherwise`, and `end` no slip of `bend`', () => {
    check(inStep('    measure gap\n      else\n#     ^^^^ G201 read as `otherwise`\n        do: Go on.'));
    const [found] = check(
      inStep('    clean cap\n    end\n#   ^^^ G201 `end` is not a word that opens a line'),
    );
    expect(found?.fixes.some(({ preferred }) => preferred)).toBe(false);
  });

  test('a sentence is text for the technician', () => {
    const line = '    Plug the sensor in until it clicks.';
    const [found] = check(inStep(`${line}\n#   ^^^^ G201 \`Plug\` is not a word`));
    expect(found?.fixes.map(({ title }) => title)).toContain(
      'Write `do: Plug the sensor in until it clicks.`',
    );
  });
});

describe('within a line', () => {
  test('only the first slip is reported, and what follows is still read', () => {
    check(inFastener('    4 of M8, hx 13 mm; torque 20 N·m\n#            ^^ G203 `hx` does not fit here'));
    expect(dumpOf(inFastener('    4 of M8, hx 13 mm; torque 20 N·m'))).toContain(
      '(torque spec=[(measure=<20 N·m>)])] broken',
    );
  });

  test('a word between two names that is no clause of the language', () => {
    const [found] = check(
      inStep('    press tyre onto wheel with press\n#              ^^^^ G203 `onto` does not fit here'),
    );
    expect(found?.advice).toBe('did you mean `into`?');
  });

  test('an order without its word', () => {
    const [found] = check(inFastener('    torque 18 N·m, cross\n#                  ^^^^^ G203'));
    expect(found?.advice).toBe('did you mean `order cross`?');
  });

  test('what to look for, written as a clause', () => {
    const [found] = check(
      inStep('    inspect seal for leaks\n#                    ^^^^^ G208 `for` takes a quantity'),
    );
    expect(found?.advice).toBe('what to look for stands below: `reject: leaks`');
  });

  test('a word too many', () => {
    check(inStep('    remove cap lid\n#              ^^^ G203 `lid` does not fit here'));
    check(inStep('    set ignition off now\n#                    ^^^ G203'));
  });

  test('a word that is missing', () => {
    check(inStep('    remove cap with\n#              ^^^^ G204 a name must follow `with`'));
    check(inStep('    wait 10 min, since\n#                ^^^^^ G204 an action must follow'));
    check(inFastener('    torque 10 N·m then\n#                 ^^^^ G204 a quantity must follow `then`'));
    check(inFastener('    per\n#   ^^^ G204 a value'));
    check(inFastener('    renew, when axle\n#               ^^^^ G204 a value must follow `axle`'));
  });

  test('a quantity for a name and a name for a quantity', () => {
    check(inFastener('    behind 3 mm\n#          ^^^^ G208 `behind` takes names'));
    check(inFastener('    torque tight\n#          ^^^^^ G208 `torque` takes a quantity'));
  });

  test('signs that code does not have', () => {
    check(inStep('    remove (cap)\n#          ^ G206 `(` has no meaning in code'));
  });

  test('quotes that are not closed', () => {
    check('procedure A-1: T\nuse "a.bay\n#   ^^^^^^ G205');
  });

  test('heads that lack what they need', () => {
    check(
      'procedure A-1: T\nlabour\n# <<<<<< G204 a time must follow `labour`\nuse a.bay\n#   ^^^^^ G208 `use` takes a file name in quotation marks\nreview\n# <<<<<< G204',
    );
    check(inStep('    if soon\n#   ^^ G204 must follow `if`'));
  });
});

describe('references in text', () => {
  test('that are not closed, or hold none', () => {
    check(
      inStep(
        '    note: Turn {bolt to {bolt torque}.\n#              ^^^^^^^^^^^^^^^^^^^^^^ G209 hold no reference',
      ),
    );
    check(inStep('    note: Turn {bolt.\n#              ^ G209 never closed'));
    check(inStep('    note: Turn \\{bolt.'));
  });
});

test('a set without its number is asked how many it is', () => {
  const [found] = check(inFastener('    M6, hex 10 mm\n#   ^^ G201'));
  expect(found?.advice).toBe('a set says how many `of` what: `4 of M6`');
  expect(found?.fixes.map((fix) => applyFix(inFastener('    M6, hex 10 mm'), fix))).toEqual(
    ['1', '?'].map((count) => inFastener(`    ${count} of M6, hex 10 mm`)),
  );
});

describe('values of an option', () => {
  test.each([
    ['drive 4x2, 4x4', 'drive d4x2, d4x4'],
    ['pack 52-kwh, 78-kwh', 'pack p52-kwh, p78-kwh'],
    ['gvw 3.5t, 5t', 'gvw g3-5t, g5t'],
  ])('begin with a letter: %s', (option, mended) => {
    const text = `catalogue: V\n\nvehicles\n  van: Van\n    option ${option}`;
    const [found] = findingsOf(new Map([['main.bay', text]])).filter(({ code }) => code.startsWith('G'));
    expect(found?.message).toBe('words that begin with a letter must follow `option`');
    const written = found?.fixes[0] && applyFix(text, found.fixes[0]);
    expect(written).toBe(text.replace(option, mended));
    expect(
      findingsOf(new Map([['main.bay', written ?? '']])).filter(({ code }) => code.startsWith('G')),
    ).toEqual([]);
  });

  test('are two or more', () => {
    check('catalogue: V\n\nvehicles\n  van: Van\n    option axle\n#   ^^^^^^ G204 an option and its values');
  });
});

describe('text from a word processor', () => {
  test('its quotation marks are quotation marks, and inch marks behind a figure', () => {
    check(inFastener('    per “HL-114”, number „AB-12“'));
    expect(dumpOf(inFastener('    per “HL-114”'))).toContain(
      dumpOf(inFastener('    per "HL-114"')).split('\n').at(-1),
    );
    check(inFastener('    4 of 3/8-16 UNC, hex 9/16”'));
    check('procedure A-1: T\nuse “van.bay”');
  });

  test('within straight ones they are part of the text', () => {
    expect(dumpOf(inFastener('    per "the “big” book"'))).toContain('the “big” book');
  });
});

describe('a value behind its quotation marks', () => {
  test('is not part of a number', () => {
    const [found] = check(
      inFastener('    number "PB-1" left\n#                 ^^^^ G203 `left` does not fit here'),
    );
    expect(found?.advice).toBe('for one side only: `, when side left`');
    check(inFastener('    number "PB-1", when side left'));
  });
});
