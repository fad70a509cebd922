// Threads, heads, torques and orders of one set: what is reported, and the ordinary book values that stay silent.
import { describe, expect, test } from 'vitest';
import { afterFix, checkMarked, findingsOf, readMarked } from '../suite-helper.js';
import { checkOnly } from './only.js';

const set = (clauses: string) => `catalogue: Set

fasteners
  cover-bolt: Cover bolts
${clauses.replace(/^\n/, '').replace(/\n\s*$/, '')}
`;

/** A liner taken off and refitted, held by a set of this name; `below` stands below the line that refits it. */
const liner = (name: string, entry: string, below = ''): string => `procedure A-1: Liner, refit

parts
  liner: Liner
    held by ${name}

fasteners
${entry}

removal
  step: Off
    remove ${name}, liner

installation
  step: On
    install liner, ${name}
${below}`;

describe('retainers', () => {
  test.each(['push-clip', 'hose-clamp', 'return-spring', 'quarter-turn', 'cable-tie'])('%s', (word) => {
    checkOnly(set(`    7 of ${word}`), 'F');
  });
  test('a word of the shop is asked about, and holds as soon as it is on', () => {
    checkMarked(
      liner(
        'liner-clip',
        '  liner-clip: Liner clips\n    7 of fir-tree\n#        ^^^^^^^^ F101 nor a retainer such as `clip`',
      ),
    );
  });
  test('a bolt is no retainer: its thread is asked for, and that it is tightened', () => {
    checkMarked(
      liner(
        'liner-bolt',
        '  liner-bolt: Liner bolts\n    6 of bolts\n#        ^^^^^ F101 says no thread: write it as M12x1.75, or as ?',
        '#   ^^^^^^^^^^^^^^^^^^^^^^^^^ S303\n',
      ),
    );
  });
  test('a quarter turn and a slip of the fingers are put right', () => {
    for (const [typed, meant] of [
      ['1/4 turn', 'quarter-turn'],
      ['circlp', 'circlip'],
    ] as const) {
      const [found] = findingsOf(readMarked(set(`    2 of ${typed}`)).files);
      expect(found?.fixes.map((fix) => fix.title)).toEqual([`Write \`${meant}\``]);
    }
  });
});

describe('ordinary book values are silent', () => {
  test.each([
    // 75 % of proof at K 0.2, the usual chart (trade tables: Shigley eq. 8-31).
    ['M6 8.8 by chart', '4 of M6x1.0, class 8.8, hex 10 mm', 'torque 10 N·m'],
    ['M12 10.9 by chart', '4 of M12x1.75, class 10.9, hex 18 mm', 'torque 126 N·m'],
    ['M12 with the old head', '4 of M12x1.75, class 8.8, hex 19 mm', 'torque 88 N·m'],
    ['oiled at the dry chart value', '4 of M10x1.5, class 8.8, hex 16 mm', 'torque 50 N·m, oiled'],
    ['1/2-13 grade 8', '4 of 1/2-13 UNC, grade 8, hex 3/4 in', 'torque 106 ft·lbf'],
    [
      '7/16-14 grade 5 in two stages',
      '10 of 7/16-14 UNC, grade 5, hex 5/8 in',
      'torque 15 ft·lbf then 40 ft·lbf, order cross',
    ],
    [
      'a first stage far below',
      '11 of M6x1.0, class 8.8, hex 10 mm',
      'torque 1 N·m then 9 N·m, order inside-out',
    ],
    ['VDI 2230 fine thread at µ 0.12', '4 of M12x1.25, class 10.9, hex 18 mm', 'torque 133 N·m'],
    ['stainless', '2 of M8x1.25, class A2-70, hex 13 mm', 'torque 16 N·m'],
    ['a nut by its class', '2 of M8x1.25, class 8, hex 13 mm', 'torque 22 N·m'],
    ['a union without class', '1 of M10x1.0, hex 11 mm', 'torque 14 ±2 N·m'],
    ['a pipe plug', '1 of 3/4-14 NPT, square 1/2 in', 'torque 25 to 35 ft·lbf'],
    ['five wheel nuts in star', '5 of M14x1.5, hex 21 mm', 'torque 160 N·m, order star'],
    ['an order written out', '5 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, order 1-3-5-2-4'],
    ['a clamp', '1 of clamp, hex 7 mm', 'torque 3 N·m'],
    ['a drain plug with its hexagon inside', '1 of M18x1.5, hex 8 mm', 'torque 35 N·m'],
    ['a countersunk screw', '6 of M8x1.25, class 8.8, hex 5 mm', 'torque 16 N·m'],
    ['the nut of an inch hose', '1 of 3/4-16 UNF, hex 7/8 in', 'torque 25 ft·lbf'],
    ['an inch socket head', '4 of 1/2-13 UNC, grade 8, hex 3/8 in', 'torque 75 ft·lbf'],
    ['a screw that cuts its thread', '4 of self-tapping-screw, hexalobular T20', 'torque 2 N·m'],
    ['a thread not known yet', '? of M8x1.25, class 8.8, hex 13 mm', 'torque ?'],
    [
      'an angle behind a low torque, new each time',
      '10 of M10x1.5, class 10.9, hex 16 mm',
      'torque 10 N·m then 90°, renew',
    ],
    [
      'an angle over a long grip',
      '10 of M12x1.75, class 10.9, hex 18 mm',
      'torque 30 N·m then 60°, grip 200 mm',
    ],
    ['a small angle for a plug', '1 of M14x1.25, hex 16 mm', 'torque 10 N·m then 30°'],
    // Valve covers and oil pans of books: 50 to 106 in·lbf on bolts of this size (common practice).
    ['a soft cover in inch-pounds', '8 of 5/16-18 UNC, grade 5, hex 1/2 in', 'torque 50 in·lbf'],
    ['a pan in inch-pounds', '14 of 1/4-20 UNC, grade 5, hex 7/16 in', 'torque 84 in·lbf'],
    ['a small clamp in inch-pounds', '4 of 1/4-20 UNC, grade 2, hex 7/16 in', 'torque 20 in·lbf'],
    ['six-lobe', '3 of M8x1.25, class 8.8, hexalobular T40', 'torque 25 N·m'],
  ])('%s', (_name, identity, torque) => {
    checkOnly(set(`    ${identity}\n    ${torque}, per "S-1"`), 'F');
  });
});

describe('slips of the pen are found', () => {
  test.each([
    [
      'twelve times too much',
      set(
        '    4 of M12x1.75, class 10.9, hex 18 mm\n    torque 1512 N·m, per "S-1"\n#          ^^^^^^^^ F201',
      ),
    ],
    [
      'a twelfth',
      set(
        '    4 of M12x1.75, class 10.9, hex 18 mm\n    torque 10.5 N·m, per "S-1"\n#          ^^^^^^^^ F203',
      ),
    ],
    [
      'foot for inch',
      set(
        '    2 of 1/4-20 UNC, grade 5, hex 7/16 in\n    torque 85 ft·lbf, per "S-1"\n#          ^^^^^^^^^ F202 `85 in·lbf` is ordinary',
      ),
    ],
    [
      'inch for foot',
      set(
        '    2 of 1/2-13 UNC, grade 8, hex 3/4 in\n    torque 75 in·lbf, per "S-1"\n#          ^^^^^^^^^ F202 `75 ft·lbf` is ordinary',
      ),
    ],
    [
      'past any bolt without a class',
      set('    1 of M6x1.0, hex 10 mm\n    torque 72 N·m, per "S-1"\n#          ^^^^^^ F201 even class 12.9'),
    ],
    [
      'the upper end of a range',
      set(
        '    2 of M8x1.25, class 8.8, hex 13 mm\n    torque 25 to 60 N·m, per "S-1"\n#          ^^^^^^^^^^^^ F201',
      ),
    ],
    [
      'the last stage',
      set(
        '    2 of M8x1.25, class 8.8, hex 13 mm\n    torque 10 N·m then 80 N·m, per "S-1"\n#                      ^^^^^^ F201',
      ),
    ],
    [
      'a pitch nobody cuts',
      set(
        '    2 of M10x1.4, class 8.8, hex 16 mm\n#        ^^^^^^^ F102 not listed in ISO 261\n    torque 40 N·m, per "S-1"',
      ),
    ],
    ['no thread at all', set('    2 of M, class 8.8, hex 16 mm\n#        ^ F101 is not a thread')],
    [
      'a class with a slip',
      set(
        '    2 of M8x1.25, class 8.9, hex 13 mm\n#                       ^^^ F103\n    torque 25 N·m, per "S-1"',
      ),
    ],
    [
      'a grade for a class',
      set(
        '    2 of M8x1.25, grade 8.8, hex 13 mm\n#                       ^^^ F103 8.8 is a class\n    torque 25 N·m, per "S-1"',
      ),
    ],
    [
      'a cross of five',
      set(
        '    5 of M8x1.25, class 8.8, hex 13 mm\n    torque 25 N·m, order cross, per "S-1"\n#                        ^^^^^ F207 even number',
      ),
    ],
    [
      'an order that leaves one out',
      set(
        '    5 of M8x1.25, class 8.8, hex 13 mm\n    torque 25 N·m, order 1-3-5-2, per "S-1"\n#                        ^^^^^^^ F207',
      ),
    ],
    [
      'an order of no known kind',
      set(
        '    5 of M8x1.25, class 8.8, hex 13 mm\n    torque 25 N·m, order zigzag, per "S-1"\n#                        ^^^^^^ F207 is not an order',
      ),
    ],
    [
      'a six-lobe size too large',
      set(
        '    3 of M6x1.0, class 8.8, hexalobular T55\n#                                       ^^^ F104\n    torque 10 N·m, per "S-1"',
      ),
    ],
    [
      'a stretch past yield',
      set(
        '    10 of M10x1.5, class 10.9, hex 16 mm\n    torque 40 N·m then 120°, grip 30 mm, per "S-1"\n#          ^^^^^^^^^^^^^^^^ F213 past yield',
      ),
    ],
  ])('%s', (_name, text) => {
    checkOnly(text, 'F');
  });
});

test.each([
  ['5', 'strar', 'star'],
  ['6', 'insideout', 'inside-out'],
  ['6', 'outside', 'outside-in'],
  ['5', 'cross', 'star'],
  ['26', 'star', 'cross'],
  ['27', 'star', undefined],
])('%s bolts, order %s: written %s', (count, written, mended) => {
  const text = set(
    `    ${count} of M8x1.25, class 8.8, hex 13 mm\n    torque 25 N·m, order ${written}, per "S-1"`,
  );
  const found = findingsOf(readMarked(text).files).find(({ code }) => code === 'F207');
  expect(found?.fixes[0]?.edits[0]?.text).toBe(mended);
});

test('a torque outside every plausible band is no second finding', () => {
  checkOnly(
    `catalogue: Wheels

parts
  wheel: Road wheel
    held by wheel-nut
    marked wheel

fasteners
  wheel-nut: Wheel nuts
    5 of M14x1.5, hex 21 mm
    torque 13.3 N·m, order star, per "S-1"
#          ^^^^^^^^ Q117
`,
    'F',
    'Q',
  );
});

test('the wrench list speaks only where a torque is right for its bolt', () => {
  const wrench = '\ntools\n  small-wrench: Small torque wrench\n    torque 2 to 25 N·m\n';
  checkOnly(
    set(
      '    4 of M12x1.75, class 8.8, hex 18 mm\n    torque 80 N·m, per "S-1"\n#          ^^^^^^ F208 cover-bolt',
    ) + wrench,
    'F',
  );
  checkOnly(
    set('    4 of M12x1.75, class 8.8, hex 18 mm\n    torque 960 N·m, per "S-1"\n#          ^^^^^^^ F201') +
      wrench,
    'F',
  );
  checkOnly(set('    4 of M8x1.25, class 8.8, hex 13 mm\n    torque 25 N·m, per "S-1"') + wrench, 'F');
});

const JOB = `procedure A-1: Cover, refit

parts
  cover: Cover
    held by cover-bolt

fasteners
  cover-bolt: Cover bolts
    4 of M8x1.25, class 8.8, hex 13 mm
    torque 10 N·m then 25 N·m, dry, per "S-1"

supplies
  thread-paste: Anti-seize paste
    grease

removal
  step: Take the cover off
    remove cover-bolt, cover

installation
  step: Fit the cover
    install cover, cover-bolt
`;

describe('lines that tighten', () => {
  test.each([
    ['a stage that is there', '    torque cover-bolt, stage 1\n    torque cover-bolt, stage 2\n'],
    ['a stage beyond', '    torque cover-bolt, stage 3\n#                            ^ F211 has 2 stages\n'],
    ['more than the set', '    snug 5 of cover-bolt\n#        ^ F212 set of 4\n    torque cover-bolt\n'],
    ['by hand in spite of a figure', '    tighten cover-bolt\n#   ^^^^^^^ F206 10 N·m then 25 N·m\n'],
    [
      'paste on dry threads',
      '    torque cover-bolt with thread-paste\n#                          ^^^^^^^^^^^^ F209 dry threads\n',
    ],
    [
      'paste applied to dry threads',
      '    apply thread-paste to cover-bolt\n#         ^^^^^^^^^^^^ F209 dry threads\n    torque cover-bolt\n',
    ],
    ['what frees a tight bolt', '    soak cover-bolt with thread-paste\n    torque cover-bolt\n'],
    ['the figure of the entry again', '    torque cover-bolt, 10 N·m then 25 N·m\n'],
  ])('%s', (_name, lines) => {
    checkOnly(JOB + lines, 'F2');
  });

  test.each([
    ['left out', '    torque cover-bolt\n#          ^^^^^^^^^^ F215 no line puts it there\n'],
    ['applied', '    apply thread-paste to cover-bolt\n    torque cover-bolt\n'],
    ['put on with the bolt', '    torque cover-bolt with thread-paste\n'],
    ['brushed on', '    lubricate cover-bolt with thread-paste\n    torque cover-bolt\n'],
  ])('a supply that the torque asks for: %s', (_name, lines) => {
    checkOnly(JOB.replace('dry', 'lubricant thread-paste') + lines, 'F2');
  });

  test.each([
    ['that reaches', 'large-wrench', ''],
    [
      'too small',
      'small-wrench',
      '#                          ^^^^^^^^^^^^ F216 2 to 15 N·m, and `cover-bolt` takes 25 N·m\n',
    ],
    ['for its stage', 'small-wrench, stage 1', ''],
    ['that takes a crowfoot', 'small-wrench, crowfoot', ''],
  ])('a wrench named on the line: %s', (_name, tools, mark) => {
    const list = `tools
  small-wrench: Small wrench
    torque 2 to 15 N·m
    length 300 mm
  large-wrench: Large wrench
    torque 5 to 50 N·m
  crowfoot: Crowfoot
    offset 38 mm

removal
`;
    const text = `${JOB.replace('removal\n', list)}    torque cover-bolt with ${tools}\n${mark}`;
    checkMarked(text, (files) => findingsOf(files).filter(({ code }) => code === 'F216'));
  });

  test('a lubricant that is no supply is left to the technician', () => {
    checkOnly(`${JOB.replace('dry', 'lubricant engine oil')}    torque cover-bolt\n`, 'F2');
    checkOnly(`${JOB.replace('dry', 'threadlocker medium')}    torque cover-bolt\n`, 'F2');
  });

  test('a figure on the line alone is judged and needs its sheet', () => {
    const bare = JOB.replace('    torque 10 N·m then 25 N·m, dry, per "S-1"\n', '');
    checkOnly(
      `${bare}    torque cover-bolt, 100 N·m, per "S-1"\n#                      ^^^^^^^ F201\n`,
      'F2',
    );
    checkOnly(
      `${bare}    torque cover-bolt, 25 N·m\n#                      ^^^^^^ F204 where does 25 N·m\n`,
      'F2',
    );
  });

  test('a set without figure is asked about once, and the fix leaves a blank', () => {
    const bare = JOB.replace('    torque 10 N·m then 25 N·m, dry, per "S-1"\n', '');
    const text = `${bare}    torque cover-bolt\n#          ^^^^^^^^^^ F205\n    torque cover-bolt\n`;
    const [found] = checkOnly(text, 'F2');
    const fix = found?.fixes.find((f) => f.title.startsWith('Add'));
    const mended = afterFix(readMarked(text).files, fix?.edits ?? []);
    expect([...mended.values()][0]).toContain('hex 13 mm\n    torque ?\n');
    expect(findingsOf(mended).filter((f) => f.code.startsWith('F'))).toEqual([]);
  });
});

test.each([
  ['M10 x 1.5 8.8', 'M10x1.5, class 8.8'],
  ['M10x1.5 cl. 10.9', 'M10x1.5, class 10.9'],
  ['1/2-13 UNC gr 5', '1/2-13 UNC, grade 5'],
])('thread and strength as they are said: %s', (said, meant) => {
  const text = `catalogue: Bolts\n\nfasteners\n  bolt: Bolts\n    2 of ${said}, hex 16 mm\n`;
  const found = findingsOf(new Map([['a.bay', text]])).find(({ code }) => code === 'F101');
  expect(found?.fixes[0]?.edits[0]?.text).toBe(meant);
});

test('thread and class as they stand on a drawing', () => {
  const text = `catalogue: Bolts

fasteners
  bolt: Bolts
    2 of M6x1.0 8.8, hex 10 mm
`;
  const found = findingsOf(new Map([['a.bay', text]])).find(({ code }) => code === 'F101');
  expect(found?.fixes[0]?.edits[0]?.text).toBe('M6x1.0, class 8.8');
});

test.each([
  ['bolt M8x1.25', 'M8x1.25'],
  ['M8x1.25 bolts, class 8.8', 'M8x1.25, class 8.8'],
  ['spline 1 1/8-12 UNF', '1 1/8-12 UNF'],
  ['self-locking nut M12x1.5', 'M12x1.5'],
  ['M10x1.5x40', 'M10x1.5, length 40 mm'],
  ['3/8-16 x 1 1/2 in', '3/8-16, length 1 1/2 in'],
  ['M12x1.5, 40 mm long', 'M12x1.5, length 40 mm'],
])('a set of %s is mended to %s', (written, mended) => {
  const text = (set: string) => `catalogue: Bolts\n\nfasteners\n  cover-bolt: Cover bolts\n    2 of ${set}\n`;
  const of = (set: string) => findingsOf(new Map([['a.bay', text(set)]]));
  const [found, ...more] = of(written);
  expect(more).toEqual([]);
  const [fix] = found?.fixes ?? [];
  expect(fix && afterFix(new Map([['a.bay', text(written)]]), fix.edits).get('a.bay')).toBe(text(mended));
  expect(of(mended)).toEqual([]);
});
