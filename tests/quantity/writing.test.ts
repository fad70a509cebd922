// How quantities are parsed as a whole and written, in files and in guides.
import { describe, expect, it } from 'vitest';
import {
  formatMeasure,
  formatNumber,
  formatSpec,
  parseQuantity,
  parseUnit,
  type QuantityKind,
  rational,
} from '../../language/src/quantity/index.js';
import type { Language } from '../../language/src/vocabulary/kinds.js';

describe('the formatter writes one form', () => {
  it.each([
    ['85 in-lb', '85 in·lbf'],
    ['115 Nm +/- 10', '115 ±10 N·m'],
    ['115 ± 10 Nm', '115 ±10 N·m'],
    ['115 +10/-5 N-m', '115 +10/-5 N·m'],
    ['115 Nm ±5%', '115 N·m ±5 %'],
    ['105 - 115 Nm', '105 to 115 N·m'],
    ['105 Nm to 115 Nm', '105 to 115 N·m'],
    ['-10 to 40 C', '-10 to 40 °C'],
    ['0.5 to 10 mm', '0.5 to 10 mm'],
    ['At least 5mm', 'at least 5 mm'],
    ['1h 40min', '1 h 40 min'],
    ['-1° 30′', '-1°30′'],
    ['0°10′ ±5′', '0°10′ ±5′'],
    ['5 feet 6 inches', '5 ft 6 in'],
    ['2 days 3 hrs', '2 d 3 h'],
    // No space within (SP 811, 7.2).
    ["1° 30'", '1°30′'],
    ['½ turn', '1/2 turn'],
    ['3 turn', '3 turns'],
    ['10 times', '10 times'],
    ['2 qt', '2 US qt'],
    ['3 fl oz', '3 US fl oz'],
    ['1 1/2"', '1 1/2 in'],
    ['1 ±1/16 in', '1 ±1/16 in'],
    ['22.0 ±0.50 mm', '22.0 ±0.50 mm'],
    ['14 300 kg', '14 300 kg'],
    ['1 500 kg', '1500 kg'],
    ['90 degrees', '90°'],
  ])('%s becomes %s', (text, expected) => {
    const read = parseQuantity(text);
    expect('measure' in read ? formatMeasure(read.measure) : read.problem).toBe(expected);
  });

  it.each([
    ['15 ft-lb then 40 ft-lb then 90 deg', '15 ft·lbf then 40 ft·lbf then 90°'],
    ['20 Nm then back 180°', '20 N·m then back 180°'],
  ])('%s becomes %s', (text, expected) => {
    const stages = text.split(' then ').map((stage) => {
      const read = parseQuantity(stage.replace(/^back /, ''));
      if (!('measure' in read)) throw new Error(read.problem);
      return { back: stage.startsWith('back '), measure: read.measure };
    });
    expect(formatSpec({ stages })).toBe(expected);
  });
});

describe('guides print minutes of arc as alignment sheets do', () => {
  it.each([
    ['5 to 10′', '0°05′ to 0°10′'],
    ["-1°30' ±45'", '−1°30′ ±0°45′'],
    ["-0°30' to 0°30'", '−0°30′ to 0°30′'],
    ["at most 90'", 'at most 1°30′'],
    ["5.5'", '0°05.5′'],
  ])('%s', (written, expected) => {
    const read = parseQuantity(written, { expected: ['angle'] });
    expect('measure' in read && formatMeasure(read.measure, { language: 'en', style: 'print' })).toBe(
      expected,
    );
  });
});

describe('guides print in their language', () => {
  it.each<[string, Language, string]>([
    ['22.0 mm', 'en', '22.0 mm'],
    ['22.0 mm', 'de', '22,0 mm'],
    ['14 300 kg', 'fr', '14\u202f300 kg'],
    ['-40 °C', 'es', '−40 °C'],
    ['105 to 115 N·m', 'es', '105 a 115 N·m'],
    ['at least 5 mm', 'fr', 'au moins 5 mm'],
    ['at most 5 mm', 'de', 'höchstens 5 mm'],
    ['1 1/2 turn', 'en', '1 1/2 turns'],
    ['1 1/2 turn', 'fr', '1 1/2 tour'],
    ['1/2 turn', 'de', '1/2 Umdrehung'],
    ['3 turns', 'es', '3 vueltas'],
    ['800 rpm', 'fr', '800 tr/min'],
    ['90°', 'de', '90°'],
    ['50 %', 'en', '50 %'],
    ['115 N·m ±5 %', 'de', '115 N·m ±5 %'],
  ])('%s in %s', (text, language, expected) => {
    const read = parseQuantity(text);
    const printed =
      'measure' in read ? formatMeasure(read.measure, { language, style: 'print' }) : read.problem;
    expect(printed.replaceAll('\u00a0', ' ')).toBe(expected);
  });

  it('keeps a number and its unit on one line', () => {
    const read = parseQuantity('115 N·m');
    expect('measure' in read && formatMeasure(read.measure, { language: 'en', style: 'print' })).toBe(
      '115\u00a0N·m',
    );
  });

  it('writes a value its digits cannot hold: in full in a file, rounded in print', () => {
    const digits = { significant: 2, decimals: 1 };
    expect(formatNumber(rational('1.25'), digits)).toBe('1.25');
    expect(formatNumber(rational('4/3'), digits)).toBe('1 1/3');
    expect(formatNumber(rational('4/3'), digits, { language: 'de', style: 'print' })).toBe('1,3');
  });
});

describe('what is no quantity is explained', () => {
  it.each<[string, QuantityKind[] | undefined, RegExp, string[] | undefined]>([
    ['', undefined, /nothing is written: write a number with its unit/, undefined],
    ['abc', undefined, /"abc" is no number/, undefined],
    ['12', undefined, /unit is missing/, undefined],
    ['10 kap', undefined, /"kap" is not a unit.*nearest is kPa/, ['kPa']],
    ['5 furlongs', undefined, /"furlongs" is not a unit/, undefined],
    ['1,5 L', undefined, /"1,5" can be misread: write 1.5/, ['1.5']],
    ['14,300 kg', undefined, /write 14 300 or 14\.300/, ['14 300', '14.300']],
    ['35 lb', ['torque'], /more than one unit: foot-pounds.*inch-pounds/, ['ft·lbf', 'in·lbf']],
    ['2 gal', ['volume'], /US gallons/, ['US gal', 'imp gal']],
    ['115 to 105 N·m', undefined, /backwards/, undefined],
    ['10 N·m to 12 mm', undefined, /one unit/, undefined],
    ['40 min 1 h', undefined, /larger unit first/, undefined],
    ['1.5 h 10 min', undefined, /only the last part/, undefined],
    ['5 N·m 3 N·m', undefined, /do not go together/, undefined],
    ['10 +5 N·m', undefined, /tolerance is written/, undefined],
    ['10 N·m now', undefined, /"now" after the quantity/, undefined],
  ])('%j', (text, expected, problem, readings) => {
    const read = parseQuantity(text, expected === undefined ? {} : { expected });
    expect('problem' in read ? read.problem : 'none').toMatch(problem);
    expect('problem' in read ? read.readings : []).toEqual(readings);
  });

  it('reads a unit alone', () => {
    const unit = (text: string) => {
      const read = parseUnit(text);
      return 'unit' in read ? read.unit.symbol : read.problem;
    };
    expect(unit(' Nm ')).toBe('N·m');
    expect(unit('"')).toBe('in');
    expect(unit('gal')).toMatch(/can mean more than one unit/);
    expect(unit('')).toMatch(/unit is missing/);
  });
});
