// Readings are compared exactly, in either unit, and never shown as equal to a limit that they miss.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { judge } from '../../compiler/page/exact.js';

const UNITS = [
  { label: 'mm', times: ['1', '1'] },
  // 1 in = 25.4 mm exactly (international yard and pound agreement of 1959; NIST SP 811 B.8).
  { label: 'in', times: ['127', '5'] },
] as const;
const AT_LEAST = { id: 'r', box: 'r', name: 'Disc thickness', units: UNITS, low: '22.0' };
const BETWEEN = { ...AT_LEAST, low: '0.05', high: '0.15' };

test.for([
  ['22.0', 'mm', 'pass', '22.0 mm'],
  ['22', 'mm', 'pass', '22.0 mm'],
  ['22,4', 'mm', 'pass', '22.4 mm'],
  ['21.9', 'mm', 'low', '21.9 mm'],
  ['21.96', 'mm', 'low', '21.96 mm'],
  ['21.9999', 'mm', 'low', '21.9999 mm'],
  ['0.866', 'in', 'low', '21.996 mm'],
  ['0.867', 'in', 'pass', '22.02 mm'],
  ['0.945', 'in', 'pass', '24.0 mm'],
] as const)('%s %s is %s and shows as %s', ([typed, unit, verdict, shown]) => {
  expect(judge(AT_LEAST, typed, unit)).toEqual({ verdict, shown, limit: '22.0 mm' });
});

test('a reading between two limits is compared with both', () => {
  expect(judge(BETWEEN, '0.04', 'mm')).toMatchObject({ verdict: 'low', limit: '0.05 mm' });
  expect(judge(BETWEEN, '0.151', 'mm')).toMatchObject({
    verdict: 'high',
    shown: '0.151 mm',
    limit: '0.15 mm',
  });
  expect(judge(BETWEEN, '0.10', 'mm')).toMatchObject({ verdict: 'pass' });
  expect(judge({ ...BETWEEN, low: '-0.2', high: '0.2' }, '−0.1', 'mm')).toMatchObject({
    verdict: 'pass',
    shown: '−0.1 mm',
  });
});

test('a limit below zero has the sign that it is printed with', () => {
  expect(judge({ ...AT_LEAST, low: '-35' }, '-34', 'mm')).toMatchObject({
    verdict: 'pass',
    shown: '\u221234 mm',
    limit: '\u221235 mm',
  });
});

test('degrees of an angle stand at the figure', () => {
  const angle = { ...BETWEEN, units: [{ label: '°', times: ['1', '1'] }] } as const;
  expect(judge(angle, '0.2', '°')).toMatchObject({ shown: '0.20°', limit: '0.15°' });
});

test('a temperature is converted with its offset', () => {
  const units = [
    { label: '°C', times: ['1', '1'] },
    { label: '°F', times: ['5', '9'], plus: ['-160', '9'] },
  ] as const;
  expect(judge({ id: 'r', box: 'r', name: 'Oil', units, low: '20', high: '40' }, '68', '°F')).toMatchObject({
    verdict: 'pass',
    shown: '20 °C',
  });
  expect(judge({ id: 'r', box: 'r', name: 'Oil', units, low: '20', high: '40' }, '67.9', '°F')).toMatchObject(
    {
      verdict: 'low',
      shown: '19.9 °C',
    },
  );
});

test.for(['', '   '])('nothing typed is no reading', (typed) => {
  expect(judge(AT_LEAST, typed, 'mm')).toEqual({ verdict: 'none' });
});

test.for(['22.4 mm', 'abc', '2 2,4,', '.', '1e3', '0x10'])('%j is not a number', (typed) => {
  expect(judge(AT_LEAST, typed, 'mm')).toEqual({ verdict: 'not a number' });
});

test('a shown value never looks like a limit that it misses', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 60_000_000 }), (millionths) => {
      const typed = (millionths / 1_000_000).toFixed(6);
      const verdict = judge(AT_LEAST, typed, 'in');
      if (verdict.verdict === 'low') expect(Number.parseFloat(verdict.shown)).toBeLessThan(22);
    }),
  );
});
