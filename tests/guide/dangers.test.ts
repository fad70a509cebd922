// The dangers of the first page.
import { expect, it } from 'vitest';
import { plain } from '../../compiler/src/document/inline.js';
import { HEAD, lower, WHEEL } from './lower-helper.js';

it('a danger of several steps names them all', () => {
  const twice = WHEEL.replace('  step: Raise\n', '  step: Raise\n    warning: The van can roll.\n').replace(
    '  step: Put it on\n',
    '  step: Put it on\n    warning: The van can roll.\n',
  );
  const where = (text: string, language: 'en' | 'de') =>
    lower(text, { language })
      .block('dangers')
      .rows.map((row) => plain(row.where));
  expect(where(twice, 'en')).toEqual(['steps 1, 3']);
  expect(where(twice, 'de')).toEqual(['Schritte 1, 3']);
});

it('the first page says that more dangers stand at their steps', () => {
  const withDangers = (count: number, after = '') =>
    lower(
      WHEEL.replace(
        '  step: Raise\n',
        `  step: Raise\n${Array.from({ length: count }, (_, i) => `    warning: Danger ${i + 1}.\n`).join('')}${after}`,
      ),
    ).block('dangers');
  expect(withDangers(3).title).toBe('Dangers of this job');
  expect(withDangers(5).title).toBe(
    'Dangers of this job: the 3 gravest of 5; the others stand at their steps',
  );
  expect(withDangers(5).rows.map((row) => plain(row.body))).toEqual(['Danger 1.', 'Danger 2.', 'Danger 3.']);
  // What can only spoil the job is not counted where it is not shown.
  expect(withDangers(3, '    notice: Paint stains.\n').title).toBe('Dangers of this job');
});

it('a list of needs makes room for itself by leaving out a danger, unless it takes two pages anyway', () => {
  const dangers = (tools: number) => {
    const names = Array.from({ length: tools }, (_, i) => `tool-${'abcdefgh'[i % 8]}${'abcdefgh'[i >> 3]}`);
    const declared = `${HEAD}\ntools\n${names.map((name) => `  ${name}: ${name}\n`).join('')}`;
    const warned = [1, 2, 3].map((i) => `    warning: Danger ${i}.\n`).join('');
    const used = names.map((name) => `    clean wheel with ${name}\n`).join('');
    return lower(`${declared}\npreparation\n  step: Clean\n${warned}${used}`).block('dangers').rows.length;
  };
  expect([dangers(22), dangers(23), dangers(28), dangers(29)]).toEqual([3, 2, 2, 3]);
});
