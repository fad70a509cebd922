// Conversion and rounding. Sources stand beside each table; SP 811 is NIST Special Publication 811 (2008).
import { describe, expect, it } from 'vitest';
import {
  compatible,
  convert,
  convertRounded,
  explainIncompatible,
  formatMeasure,
  implausible,
  type Measure,
  numberOf,
  otherSystem,
  parseQuantity,
  type QuantityUse,
  rational,
  roundTo,
  toSI,
  unitById,
} from '../../language/src/quantity/index.js';

describe('rounding, SP 811 B.7.1', () => {
  it.each([
    ['6.9749515', 2, '6.97'], // B.7.1: first dropped digit under 5
    ['6.9749515', 4, '6.9750'], // B.7.1: dropped part over 5
    ['6.9749515', 1, '7.0'], // B.7.1
    ['6.9749515', 6, '6.974952'], // B.7.1: exactly 5, to even
    ['6.9749505', 6, '6.974950'], // B.7.1: exactly 5, to even
    ['1.655000', 2, '1.66'], // ASME A112.18.1/CSA B125.1 Annex A, ties to even
    ['1.625000', 2, '1.62'], // same
    ['190.5', 0, '190'], // NIST PS 20-20 Table 3: 7-1/2 in printed as 190 mm
    ['1.347', 1, '1.3'], // MTO LS-100 3.3: once, not by way of 1.35
    ['-2.5', 0, '-2'], // symmetric
    ['1250', -2, '1200'], // ties to even in hundreds
  ])('%s to %i decimals is %s', (value, decimals, rounded) => {
    expect(roundTo(rational(value), decimals)).toEqual(rational(rounded));
  });

  it.each([
    ['1.21', 'up', '1.3'],
    ['1.29', 'down', '1.2'],
    ['-1.21', 'up', '-1.2'],
    ['-1.21', 'down', '-1.3'],
    ['1.2', 'up', '1.2'],
  ] as const)('%s rounded %s is %s', (value, mode, rounded) => {
    expect(roundTo(rational(value), 1, mode)).toEqual(rational(rounded));
  });
});

describe('converted values, rounded', () => {
  it.each([
    // SP 811 B.7.2, the standard's own example.
    ['36 ft', 'm', '11.0 m'],
    // Worked from the rule of B.7.2: fewest digits whose rounding error is not above the source's.
    ['9 ft·lbf', 'N-m', '12 N·m'],
    ['25 ft·lbf', 'N-m', '34 N·m'],
    ['80 ft·lbf', 'N-m', '108 N·m'],
    ['85 in·lbf', 'N-m', '9.6 N·m'],
    ['115 N·m', 'ft-lbf', '84.8 ft·lbf'],
    // NIST PS 20-20 Table 3.
    ['7 1/2 in', 'mm', '190 mm'],
    // Two digits at least; common practice of shop books.
    ['2 US qt', 'L', '1.9 L'],
    ['1 in', 'mm', '25 mm'],
    ['1/2 in', 'mm', '13 mm'],
    ['3/8 in', 'mm', '9.5 mm'],
    ['14 300 lb', 'kg', '6490 kg'],
    ['1000 kg', 'lb', '2200 lb'],
    // Temperature points keep their decimals; the four points of the UCUM run.
    ['32 °F', 'degC', '0 °C'],
    ['68 °F', 'degC', '20 °C'],
    ['212 °F', 'degC', '100 °C'],
    ['-40 °F', 'degC', '-40 °C'],
    ['82.5 °C', 'degF', '180.5 °F'],
    ['10 K', 'delta-degF', '18 Δ°F'],
    // Limits inside: ASME A112.18.1/CSA B125.1 Annex A e). 22 to 27 N·m is 16.227 to 19.914 lbf·ft.
    ['22 to 27 N·m', 'ft-lbf', '16.3 to 19.9 ft·lbf'],
    ['0.006 to 0.012 in', 'mm', '0.16 to 0.30 mm'],
    ['at least 5 mm', 'in', 'at least 0.20 in'],
    ['at most 1 in', 'mm', 'at most 25 mm'],
    ['115 ±10 N·m', 'ft-lbf', '84.8 ±7.3 ft·lbf'],
    ['115 N·m ±5 %', 'ft-lbf', '84.8 ±4.2 ft·lbf'],
    ['22.00 +0.02/-0 mm', 'in', '0.8662 +0.0007/-0 in'],
    ['22.00 +0/-0.02 mm', 'in', '0.8661 +0/-0.0007 in'],
    ['0 mm', 'in', '0 in'],
    ['5 ft 6 in', 'm', '1.68 m'],
    ['1 h 40 min', 'min', '100 min'],
    // The sign in front is that of the whole, though a zero does not keep it; a range and a tolerance may have two parts.
    ["-0°30'", 'degree', '-0.50°'],
    ["-1°30' ±45'", 'degree', '-1.50 ±0.75°'],
    ["0°10' ±5'", 'arcminute', '10 ±5′'],
    ["-0°30' to 0°30'", 'arcminute', '-30 to 30′'],
    ['10 to 10 mm', 'in', '0.39 to 0.39 in'],
    ['10.0 to 10.1 mm', 'in', '0.394 to 0.397 in'],
  ])('%s in %s is %s', (text, unit, expected) => {
    expect(formatMeasure(convertRounded(measure(text, unit), unitById(unit)))).toBe(expected);
  });

  it.each([
    // GNU units 2.22 and UCUM, from the exact definitions.
    ['150 ft·lbf', 'N-m', '203.3727 N·m'],
    ['110 N·m', 'ft-lbf', '81.13184 ft·lbf'],
    ['110 N·m', 'kgf-m', '11.21688 kgf·m'],
    ['12 in·lbf', 'ft-lbf', '1 ft·lbf'], // SP 811: exact
    ['1000 mbar', 'bar', '1 bar'], // SP 811: exact
    ['36 ft', 'm', '10.9728 m'], // SP 811 B.7.2: exact
    ['0 °F', 'degC', '−17.77778 °C'], // GNU units
    ['1 Δ°F', 'K', '0.5555556 K'], // GNU units
  ])('%s in %s is exactly %s', (text, unit, expected) => {
    const exact = convert(measure(text, unit), unitById(unit), { exact: true });
    expect(formatMeasure(exact, { language: 'en', style: 'print' }).replace('\u00a0', ' ')).toBe(expected);
  });

  it('keeps the exact value however it prints', () => {
    const there = convert(measure('85 in·lbf', 'N-m'), unitById('N-m'), { exact: true });
    const back = convert(there, unitById('in-lbf'), { exact: true });
    expect(back.form === 'amount' ? back.value : undefined).toEqual(rational('85'));
  });
});

describe('the other system', () => {
  it.each([
    // Common practice: wrenches for small torques are marked in in·lbf, bottles in quarts.
    ['115 N·m', 'ft·lbf'],
    ['19 N·m', 'in·lbf'],
    ['20 N·m', 'ft·lbf'],
    ['15 to 25 N·m', 'ft·lbf'],
    ['at most 8 N·m', 'in·lbf'],
    ['85 in·lbf', 'N·m'],
    ['1.9 L', 'US qt'],
    ['40 L', 'US gal'],
    ['17 US pt', 'L'],
    ['210 kPa', 'psi'],
    ['22.0 mm', 'in'],
    ['80 °C', '°F'],
    ['10 K', 'Δ°F'],
    ['40 min', undefined],
    ['90°', undefined],
    ['12 V', undefined],
  ])('beside %s stands %s', (text, symbol) => {
    expect(otherSystem(measure(text))?.symbol).toBe(symbol);
  });
});

describe('kinds', () => {
  it('keeps torque and energy, points and differences apart', () => {
    expect(compatible(unitById('N-m'), unitById('ft-lbf'))).toBe(true);
    expect(compatible(unitById('N-m'), unitById('J'))).toBe(false);
    expect(compatible(unitById('degC'), unitById('K'))).toBe(false);
  });

  it('says why in the words of the shop', () => {
    expect(explainIncompatible(unitById('psi'), unitById('N-m'), '35 psi')).toBe(
      '35 psi is a pressure; N·m measures torque: a torque is written as in 115 N·m',
    );
    expect(explainIncompatible(unitById('degC'), unitById('K'), '10 °C')).toBe(
      '10 °C is a temperature; K measures temperature difference: for a rise or a drop, write 10 K or 18 Δ°F',
    );
  });

  it('refuses to convert between kinds', () => {
    expect(() => convert(measure('35 psi'), unitById('N-m'))).toThrow(RangeError);
  });

  it('gives the limits in coherent units', () => {
    const { low, nominal, high } = toSI(measure('100 ±10 °C'));
    expect([low, nominal, high].map((value) => value && numberOf(value))).toEqual([363.15, 373.15, 383.15]);
    expect(toSI(measure('at most 2 bar'))).toEqual({ high: rational('200000') });
  });
});

describe('plausible values (bands are common practice)', () => {
  it.each<[string, QuantityUse, boolean]>([
    ['2 bar', 'tyre pressure', true],
    ['35 psi', 'tyre pressure', true],
    ['8.5 bar', 'tyre pressure', true],
    ['200 bar', 'tyre pressure', false],
    ['13 N·m', 'wheel-nut torque', false],
    ['108 to 120 N·m', 'wheel-nut torque', true],
    ['600 N·m', 'wheel-nut torque', true],
    ['1.9 L', 'fluid fill', true],
    ['-20 kPa', 'any', true],
    ['2000 bar', 'any', true],
    ['90°', 'tyre pressure', true],
    ['-300 °C', 'any', false],
  ])('%s as %s: %s', (text, use, isPlausible) => {
    expect(implausible(measure(text), use) === undefined).toBe(isPlausible);
  });
});

function measure(text: string, target?: string): Measure {
  const read = parseQuantity(text, target === undefined ? {} : { expected: [unitById(target).kind] });
  if ('problem' in read) throw new Error(`${text}: ${read.problem}`);
  return read.measure;
}
