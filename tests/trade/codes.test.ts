// Vehicle identification numbers and trouble codes.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dtcCheck, vinCheck } from '../../language/src/trade/index.js';

describe('VIN check digit', () => {
  it.each([
    ['1G4AH59H45G118341', '4', '49 CFR 565 table V'],
    ['1M8GDM9AXKP042788', 'X', 'public worked example'],
    ['11111111111111111', '1', 'public test suites'],
  ])('%s carries %s (%s)', (vin, expectedDigit) => {
    expect(vinCheck(vin)).toMatchObject({ ok: true, check: 'right', expectedDigit });
  });

  // Run once through @vroomlabs/vin-validate 1.0.2 (checkDigitFromVin): an independent library.
  it.each([
    ['SM3VA30D0JA000100', '7'],
    ['4MRTV3KB0N2718281', '9'],
    ['XM7ZZZ300LK314159', '4'],
    ['2SDHB91P0YC057721', '2'],
    ['VM9EFGHJ0TW866025', '2'],
  ])('%s computes to %s', (vin, expectedDigit) => {
    expect(vinCheck(vin).expectedDigit).toBe(expectedDigit);
  });

  it('a wrong digit is a problem only where the digit binds', () => {
    expect(vinCheck('1M8GDM9A1KP042788')).toMatchObject({
      ok: false,
      check: 'wrong',
      problem: expect.stringContaining('should be X'),
    });
    expect(vinCheck('SGZCZ43D13S812715')).toMatchObject({ ok: true, check: 'wrong', expectedDigit: 'X' });
  });

  it.each([
    ['1M8GDM9AXKP04278', /17 characters, this has 16/],
    ['1M8GDM9AXKPO42788', /no O \(read it as 0\)/],
    ['1M8GDM9AXKPI42788', /read it as 1/],
    ['', /this has 0/],
  ])('“%s” is no VIN', (vin, message) => {
    expect(vinCheck(vin)).toMatchObject({ ok: false, problem: expect.stringMatching(message) });
  });

  it('every single wrong digit in the serial of a right number is found', () => {
    fc.assert(
      fc.property(fc.integer({ min: 11, max: 16 }), fc.integer({ min: 1, max: 9 }), (place, add) => {
        const vin = '1M8GDM9AXKP042788';
        const digit = (Number(vin[place]) + add) % 10;
        expect(vinCheck(vin.slice(0, place) + digit + vin.slice(place + 1)).check).toBe('wrong');
      }),
    );
  });
});

describe('trouble codes (SAE J2012 scope)', () => {
  it.each([
    ['P0301', 'P0301', 'powertrain', 'ISO/SAE'],
    ['p2 463', 'P2463', 'powertrain', 'ISO/SAE'],
    ['P1234', 'P1234', 'powertrain', 'vehicle maker'],
    ['P3100', 'P3100', 'powertrain', 'vehicle maker'],
    ['P3400', 'P3400', 'powertrain', 'ISO/SAE'],
    ['C0035', 'C0035', 'chassis', 'ISO/SAE'],
    ['B1A00', 'B1A00', 'body', 'vehicle maker'],
    ['B3000', 'B3000', 'body', 'reserved'],
    ['U010087', 'U0100-87', 'network', 'ISO/SAE'],
    ['U0100-87', 'U0100-87', 'network', 'ISO/SAE'],
  ])('%s is %s', (text, printed, system, definedBy) => {
    expect(dtcCheck(text)).toMatchObject({ ok: true, printed, system, definedBy });
  });
  it.each([
    ['X0301', /begins with/],
    ['PO301', /P0301/],
    ['P4301', /0 to 3/],
    ['P03', /four characters/],
    ['', /begins with/],
  ])('%s is none', (text, message) => {
    expect(dtcCheck(text)).toMatchObject({ ok: false, problem: expect.stringMatching(message) });
  });
});
