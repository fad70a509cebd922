// Work where none goes, and blocks with nothing in them.
import { describe, expect, test } from 'vitest';
import { afterFix, checkMarked, findingsOf, readMarked } from '../suite-helper.js';

const START = `procedure A-1: Mirror, look at

limits
  gap: Gap
    at most 1 mm, per "S-1"

sources
  S-1: Sheet

inspection
  step: Look`;

test('a step with nothing in it is still to be written', () => {
  checkMarked(`${START}
    measure gap
  step: Clean
`);
});

test('blocks that say nothing by themselves', () => {
  checkMarked(`${START}
    when year 2021 to 2025
#   ^^^^^^^^^^^^^^^^^^^^^^ G117 nothing stands below
    measure gap
      if above limit
#     ^^^^^^^^^^^^^^ G117
      otherwise
#     ^^^^^^^^^ G117
    repeat: Until it is clean.
#   ^^^^^^ G117
`);
});

test('a block whose lines could not be read is not empty', () => {
  checkMarked(`${START}
    measure gap
      if above limit
        clan gap
#       ^^^^ G201
`);
});

test('each phase of work in a catalogue', () => {
  checkMarked(`catalogue: Mirrors

places
  glass: Glass

inspection
# <<<<<<<<<< G116 a catalogue has none
  step: Clean
    clean glass
`);
});

describe('the result that an `if` asks for', () => {
  const job = (work: string): string =>
    START.replace('  step: Look', `  step: Look\n${work.replace(/^\n|\n\s*$/g, '')}\n`);
  test('stands below the measuring, or right behind it', () => {
    checkMarked(
      job(`
    measure gap
      if above limit
        note: Wide.
    measure gap
    note: Twice.
    if above limit
      note: Wide.
    otherwise
      note: Right.
    if needed: It sticks.
      clean gap`).replace('      clean gap', '      note: Oil it.'),
    );
  });
  test('is named, from further away', () => {
    checkMarked(
      job(`
    measure gap
    wait 5 min
    if gap above limit
      note: Wide.`),
    );
  });
  test('is given by no line', () => {
    checkMarked(
      job(`
    if gap above limit
#   ^^^^^^^^^^^^^^^^^^ G118 nothing measures it before
      note: Wide.
    wait 5 min
      if above limit
#     ^^^^^^^^^^^^^^ G118 the line above gives none
        note: Wide.
    measure gap
    wait 5 min
    if above limit
#   ^^^^^^^^^^^^^^ G118
      note: Wide.`),
    );
  });
  test('is named by the fix after the last line that measured', () => {
    const { files } = readMarked(
      job(`
    measure gap
    wait 5 min
    if above limit
      note: Wide.`),
    );
    const [fix] = findingsOf(files)[0]?.fixes ?? [];
    expect(fix?.title).toBe('Write `if gap above limit`');
    expect(findingsOf(afterFix(files, fix?.edits ?? []))).toEqual([]);
  });
});
