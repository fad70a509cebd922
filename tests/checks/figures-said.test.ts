// Q and N: figures as they are said in a shop: heads in fractions, bounds behind their figure, grades without a standard.
import { expect, test } from 'vitest';
import { afterFix, findingsOf } from '../suite-helper.js';

test.each([
  ['hex 1-5/8', 'Q107', 'hex 1 5/8 in'],
  ['hex 5/8', 'Q105', 'hex 5/8 in'],
  ['hex 1-5/8 in', 'Q107', 'hex 1 5/8 in'],
])('a head of a fraction, %s, is asked about once', (head, code, mended) => {
  const text = (head: string) =>
    `catalogue: Nuts\n\nfasteners\n  axle-nut: Axle nut\n    1 of 1 1/8-12 UNF, ${head}\n    torque 150 ft·lbf, per ?\n`;
  const of = (head: string) =>
    findingsOf(new Map([['a.bay', text(head)]])).filter((f) => f.code.startsWith('Q10'));
  const [found, ...more] = of(head);
  expect([found?.code, more]).toEqual([code, []]);
  const [fix, ...others] = found?.fixes ?? [];
  expect([fix?.preferred, others]).toEqual([true, []]);
  expect(fix && afterFix(new Map([['a.bay', text(head)]]), fix.edits).get('a.bay')).toBe(text(mended));
  expect(of(mended)).toEqual([]);
});

test('min behind the figure of a limit is asked about, and never minutes in silence', () => {
  const text = (figure: string) => `catalogue: Gaps\n\nlimits\n  gap: Gap\n    ${figure}\n`;
  const of = (figure: string) => findingsOf(new Map([['a.bay', text(figure)]]));
  const [found] = of('1.2 min');
  expect(`${found?.code} ${found?.message}`).toBe(
    'Q103 `min` can be the least that is allowed, without its unit or minutes of time',
  );
  expect(found?.fixes.map(({ edits }) => edits[0]?.text)).toEqual([
    'at least 1.2 mm',
    'at least 1.2 in',
    'at least 1.2 min',
    'at most 1.2 min',
  ]);
  for (const clear of ['at least 1.2 min', 'at most 5 min', '2 to 5 min', '5 ±1 min'])
    expect(of(clear)).toEqual([]);
});

test.each([
  ['measure gap at most 0.010 in', '', 'at most 0.010 in'],
  ['measure gap, 0.010 in max', '', undefined],
  ['measure gap max 0.010 in', '', undefined],
  ['measure gap at most 0.010 in', '    at most 0.010 in\n', ''],
  ['measure gap at most 0.012 in', '    at most 0.010 in\n', undefined],
])('the values of a limit in its step: %s', (line, entry, moved) => {
  const text = (entry: string, line: string) =>
    `procedure A-1: Gap\n\nlimits\n  gap: Gap\n${entry}\ninspection\n  step: Look\n    ${line}\n`;
  const files = new Map([['a.bay', text(entry, line)]]);
  const [found, ...more] = findingsOf(files);
  expect(more).toEqual([]);
  expect(found?.advice).toMatch(
    /^the values stand at the limit, below `gap: …` in `limits`: `at most 0\.01\d in`$/,
  );
  const [fix] = found?.fixes ?? [];
  const mended = fix && afterFix(files, fix.edits).get('a.bay');
  expect(mended).toBe(
    moved === undefined ? undefined : text(moved === '' ? entry : `    ${moved}\n`, 'measure gap'),
  );
});

test.each([
  ['5W-30', 'SAE 5W-30'],
  ['75w90', 'SAE 75W-90'],
])('a grade without its standard, %s', (said, meant) => {
  const text = `catalogue: Oils\n\nfluids\n  oil: Oil\n    ${said}, ACEA C3\n`;
  const [found] = findingsOf(new Map([['a.bay', text]])).filter(({ code }) => code === 'Q101');
  expect(found?.advice).toBe(`a grade stands behind the name of its standard: \`${meant}\``);
  expect(found?.fixes.map(({ edits }) => edits[0]?.text)).toEqual([meant]);
});
