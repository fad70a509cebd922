// Work where none goes, and blocks with nothing in them.
import { test } from 'vitest';
import { checkMarked } from '../suite-helper.js';

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
