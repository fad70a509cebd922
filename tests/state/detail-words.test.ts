// What is said of a thing that is not as it came in, in each language of the guides; times of an hour or more both as
// written and in hours.
import { describe, expect, test } from 'vitest';
import { hoursOf } from '../../language/src/names/figures.js';
import { detailText, type StateDetail } from '../../language/src/state/detail-words.js';
import { parse } from '../../language/src/syntax/index.js';
import { LANGUAGES } from '../../language/src/vocabulary/kinds.js';

const DETAILS: readonly StateDetail[] = [
  { what: 'all', all: 5 },
  { what: 'some', count: 4, all: 5 },
  { what: 'stage', stage: 2 },
  { what: 'word', word: 'drained' },
  { what: 'fresh', name: 'gasket-maker' },
  { what: 'spent' },
  { what: 'on stands' },
  { what: 'clocks', clocks: [{ word: 'fill after', time: '90 min (1 h 30 min)' }] },
];

test('in English', () => {
  expect(DETAILS.map((detail) => detailText(detail, 'en'))).toEqual([
    'all 5',
    '4 of 5',
    'stage 2 done',
    'drained',
    'new gasket-maker',
    'used once: fit new',
    'on stands',
    'fill after 90 min (1 h 30 min)',
  ]);
});

test('in words of its own in every language, figures in place', () => {
  for (const detail of DETAILS) {
    const said = LANGUAGES.map((language) => detailText(detail, language));
    expect(new Set(said).size).toBe(LANGUAGES.length);
    for (const text of said) expect(text).not.toMatch(/[{}]|undefined/);
  }
});

test('a word of the procedure stays as it is written', () => {
  expect(detailText({ what: 'word', word: 'neutral' }, 'de')).toBe('neutral');
});

describe('a time in hours', () => {
  test.each([
    ['90 min', '1 h 30 min'],
    ['1440 min', '24 h'],
    ['1.5 h', '1 h 30 min'],
    ['24 h', undefined],
    ['1 h 40 min', undefined],
    ['45 min', undefined],
    ['90 s', undefined],
  ])('%s', (written, hours) => {
    const { tree } = parse(`procedure A-1: A\n\nlabour ${written}\n`, 'a.bay');
    const labour = tree.lines.find((line) => line.kind === 'labour');
    expect(hoursOf(labour?.time)).toBe(hours);
  });
});
