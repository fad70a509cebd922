// Slips on a line: what is said, where, and that one slip gives one finding.
import { describe, expect, test } from 'vitest';
import { checkMarked } from '../suite-helper.js';
import { dumpOf, findingsOf } from './read.js';

const check = (text: string) => checkMarked(text, findingsOf);
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

  test('further off it is not read, nor is its block', () => {
    check(
      inStep(
        '    dismantle cap\n#   ^^^^^^^^^ G201 `dismantle` is not a word that opens a line in a step\n      all: below\n        goes',
      ),
    );
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

  test('a clause word is no name', () => {
    check('procedure A-1: T\nsupplies\n  sealant: Sealant\n# ^^^^^^^ G207');
  });
});

describe('within a line', () => {
  test('only the first slip is reported, and what follows is still read', () => {
    check(inFastener('    4 of M8, hx 13 mm; torque 20 N·m\n#            ^^ G203 `hx` does not fit here'));
    expect(dumpOf(inFastener('    4 of M8, hx 13 mm; torque 20 N·m'))).toContain(
      '(torque spec=[(measure=<20 N·m>)])] broken',
    );
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
