// The wording review: what it marks in a text, and the plain sentences that it leaves alone.
import { describe, expect, test } from 'vitest';
import { countWords, sentencesOf } from '../../language/src/checks/texts.js';
import { findingsOf, readMarked } from '../suite-helper.js';
import { checkOnly } from './only.js';

const step = (lines: string, after = '') => `procedure A-1: Job

places
  spot: Spot

removal
  step: Work
${lines}
${after}`;

describe('texts', () => {
  test.each([
    ['plain orders', step('    clean spot: Use a wet cloth. Wipe from the top.')],
    ['a figure by reference', step('    clean spot: Raise the arm until the height is inside {spot}.')],
    [
      'a state, no order',
      step('    notice: The bearing is not clamped until the axle nut is torqued.\n    clean spot'),
    ],
    [
      'a colon parts two short sentences',
      step(
        '    clean spot: Run the nuts up by hand only: a bush that is tightened at full droop is twisted for the rest of its life.',
      ),
    ],
    [
      'vague',
      step(
        '    clean spot: Tighten it until it is nice and tight.\n#                                      ^^^^^^^^^^^^^^ W101 nice and tight',
      ),
    ],
    [
      'vague over a line end',
      step(
        '    clean spot:\n      Put on a little\n#            ^^^^^^^^ W101 a little bit\n      bit of paste.',
      ),
    ],
    ['as needed', step('    do: Add shims as needed.\n#                 ^^^^^^^^^ W101')],
    [
      'a note may run to 25 words',
      step(
        '    note: The bush is made of rubber that is glued to both of its sleeves and so it turns with them and never slides in them.\n    clean spot',
      ),
    ],
    [
      'two instructions',
      step('    do: Wet the glass and then wipe it.\n#                     ^^^^^^^^ W103'),
    ],
    ['a passive order', step('    do: The glass must be wiped.\n#                 ^^^^^^^^^^^^^ W104')],
    ['a warning may say what can be', step('    warning: A hand can be crushed.\n    clean spot')],
    ["driver's side", step("    do: Begin on the driver's side.\n#                    ^^^^^^^^^^^^^ W107")],
    ['near side', step('    do: Begin on the nearside.\n#                    ^^^^^^^^ W107')],
    ['the offside of no vehicle', step('    do: Read the offset.')],
    [
      'mixed terms',
      step(
        '    do: Make sure that it is dry.\n    do: Ensure that it is clean.\n#       ^^^^^^ W108 “Make sure” above'.replace(
          '“Make sure”',
          '“make sure”',
        ),
      ),
    ],
    ['one term', step('    do: Make sure that it is dry.\n    do: Make sure that it is clean.')],
    [
      'a tool in the text only',
      step(
        '    do: Take the trolley jack.\n#                ^^^^^^^^^^^^ W109',
        '\ntools\n  trolley-jack: Trolley jack\n',
      ),
    ],
    [
      'a tool on a line and in the text',
      step(
        '    clean spot with trolley-jack\n    do: Move the trolley jack.',
        '\ntools\n  trolley-jack: Trolley jack\n',
      ),
    ],
    ['a tool of one word', step('    do: The parts lift off easily.', '\ntools\n  lift: Lift\n')],
  ])('%s', (_name, text) => {
    checkOnly(text, 'W');
  });
});

describe('inspections', () => {
  test.each([
    ['nothing to look for', step('    inspect spot\n#           ^^^^ W105')],
    ['a remark tells', step('    inspect spot: Look for wet edges.')],
    [
      'a list with its consequence',
      step('    inspect spot\n      reject: cracks\n      if rejected\n        stop: Ask.'),
    ],
    [
      'a consequence by name further down',
      step('    inspect spot\n      reject: cracks\n    clean spot\n    if spot rejected\n      stop: Ask.'),
    ],
    [
      'lists with none, told once',
      step(
        '    inspect spot\n      reject: cracks\n#     ^^^^^^ W106 2 lists\n    inspect spot\n      reject: rust',
      ),
    ],
    [
      'the last look before handing back',
      'procedure A-1: Job\n\nplaces\n  spot: Spot\n\ncompletion\n  step: Hand back\n    inspect spot\n      reject: drips\n',
    ],
  ])('%s', (_name, text) => {
    checkOnly(text, 'W');
  });
});

test('the review is a setting, and speaks of English only', () => {
  const text = step('    do: Add shims as needed.');
  for (const settings of ['{ "wording": false }', '{ "languages": ["de"] }']) {
    const files = new Map([...readMarked(text).files, ['baywright.json', settings]]);
    expect(findingsOf(files).filter((f) => f.code.startsWith('W'))).toEqual([]);
  }
});

test.each([
  ['Torque it to 25 N·m.', 4],
  ['A self-locking nut.', 3],
  ['Open the screw {bleed-screw turns}.', 4],
  ['Let it run for 15 min - not more.', 7],
])('%s has %i words', (text, count) => {
  expect(countWords(text)).toBe(count);
});

test('a sentence ends at a stop, not in a figure', () => {
  const texts = sentencesOf({ text: 'Set 1.5 mm. Wait.\n\nGo on: now', start: 10 });
  expect(texts.map((s) => s.text)).toEqual(['Set 1.5 mm', 'Wait', 'Go on', 'now']);
  expect(texts[0]).toMatchObject({ start: 10, end: 20 });
});
