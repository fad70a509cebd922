// How numbers and units are read. Spellings are common practice in workshops, no source, unless a row says so.
import { describe, expect, it } from 'vitest';
import {
  nearestUnit,
  numberOf,
  type QuantityKind,
  rational,
  readNumber,
  readUnit,
  resolveUnit,
  unitById,
  units,
} from '../../language/src/quantity/index.js';

describe('units as a workshop types them', () => {
  it.each([
    ['N·m', 'N·m Nm N-m N.m N*m N⋅m Nms'],
    [
      'ft·lbf',
      'ft-lb ft-lbs lb-ft lbs-ft ftlb ftlbs lbft ft·lbf lbf·ft lb.ft ft/lb FT-LB Ft-Lbs ft# foot-pounds',
    ],
    ['in·lbf', 'in-lb in-lbs inlb inlbs lb-in in·lbf lbf·in IN-LB inch-pounds'],
    ['kgf·m', 'kgf·m kg-m kgm mkg kgf-m'],
    ['kgf·cm', 'kgf·cm kg-cm'],
    ['kgf/cm²', 'kg/cm2 kgf/cm² kg/cm²'],
    ['psi', 'psi PSI psig lb/in² lbf/in2 #'],
    ['kPa', 'kPa kpa KPA'],
    ['MPa', 'MPa mpa N/mm²'],
    ['inHg', 'inHg "Hg'],
    ['L', 'L l ltr litre litres liter'],
    ['cm³', 'cc cm3 cm³ ccm'],
    ['mm', 'mm MM millimetres'],
    ['µm', 'µm μm um micron'],
    ['in', "\" ″ in in. inch inches '' ”"],
    ['thou', 'thou mils'],
    ['°', '° deg degrees º'],
    ['°C', '°C C degC ℃ ºC'],
    ['°F', '°F F degF'],
    ['h', 'h hr hrs hours'],
    ['min', 'min mins minutes'],
    ['turn', 'turn turns rev'],
    ['rpm', 'rpm RPM r/min U/min tr/min min-1 1/min'],
    ['km/h', 'km/h kph KPH'],
    ['A·h', 'Ah A·h A-h'],
    ['Ω', 'Ω \u2126 ohm ohms Ohms'],
    ['metric hp', 'PS ps CV'],
    ['K', 'K Δ°C'],
    ['%', '% percent'],
  ])('%s', (symbol, spellings) => {
    for (const spelling of spellings.split(' ')) {
      const read = readUnit(`9${spelling}, then`, 1);
      const meant = read === undefined ? undefined : resolveUnit(read, [kindOf(symbol)]);
      expect([spelling, meant?.symbol, read?.end]).toEqual([spelling, symbol, 1 + spelling.length]);
    }
  });

  it.each([
    ['5 N m dry', 'N·m', 5],
    ['5 ft lbs', 'ft·lbf', 8],
    ['5 US  qt, per', 'US qt', 8],
    ['5\u00a0in\u202flb', 'in·lbf', 7],
    ['3 fl oz (US)', 'US fl oz', 12],
    ['20 degrees C', '°C', 12],
    ['20 in Hg', 'inHg', 8],
    ['20 in hub', 'in', 5],
    ['9 deg. C', '°C', 8],
  ])('keeps to the longest spelling in %s', (text, symbol, end) => {
    const read = readUnit(text, text.search(/[^\d]/));
    expect([read?.unit?.symbol, read?.end]).toEqual([symbol, end]);
  });

  it.each([
    ['3/4"x2', 3],
    ['4 "HL-114"', 1],
    ['10W-40', 2],
    ['75W-90', 2],
    ['5 kg/m3', 1],
    ['4 in2x', 1],
    ['5 mmm', 1],
    ['12 V-belts', 2],
    ['8 m·s', 1],
    ['8 cm4', 1],
    ['4 of M12', 1],
    ['1st', 1],
    ['5 é', 1],
    ['5 mé', 1],
    ['5', 1],
    ['5 ', 1],
  ])('finds no unit in %s', (text, offset) => {
    expect(readUnit(text, offset)).toBeUndefined();
  });

  it.each<[string, string[]]>([
    ['lb', ['lb', 'ft·lbf', 'in·lbf', 'lbf', 'psi']],
    ['oz', ['oz', 'US fl oz', 'imp fl oz', 'in·ozf']],
    ['gal', ['US gal', 'imp gal']],
    ['qt', ['US qt', 'imp qt']],
    ['pt', ['US pt', 'imp pt']],
    ['fl oz', ['US fl oz', 'imp fl oz']],
    ['nm', ['N·m', 'nanometre']],
    ['NM', ['N·m', 'nmi']],
    ['M', ['m', 'min', 'mi']],
    ['mil', ['thou', 'mm', 'mL']],
    ['ton', ['t', 'US ton', 'imp ton']],
    ['KN', ['kN', 'kn']],
    ['MOHM', ['mΩ', 'MΩ']],
  ])('asks what %s means', (spelling, symbols) => {
    const read = readUnit(`5 ${spelling}`, 1);
    expect(read?.unit).toBeUndefined();
    expect(read?.readings?.map(({ unit }) => unit.symbol)).toEqual(symbols);
    const usual = read?.readings?.find((each) => each.isUsual)?.unit;
    if (read !== undefined) expect(resolveUnit(read)).toBe(usual);
  });

  it.each<[string, QuantityKind[], string | undefined]>([
    ['lb', ['mass'], 'lb'],
    ['lb', ['torque'], undefined],
    ['lb', ['force'], 'lbf'],
    ['oz', ['mass'], 'oz'],
    ['oz', ['volume'], undefined],
    ['oz', ['mass', 'volume'], undefined],
    ['nm', ['torque'], 'N·m'],
    ['gal', ['volume'], undefined],
    ['pt', ['volume'], undefined],
    ['qt', ['volume'], 'US qt'],
    ['fl oz', ['volume'], 'US fl oz'],
    ['M', ['time'], 'min'],
    ['M', ['torque'], undefined],
    ['mm', ['torque'], 'mm'],
  ])('lets the place decide: %s where %j is wanted', (spelling, expected, symbol) => {
    const read = readUnit(spelling, 0);
    expect(read === undefined ? 'unread' : resolveUnit(read, expected)?.symbol).toBe(symbol);
  });

  it('reads every spelling of every unit to its end, as that unit or as a question that names it', () => {
    for (const unit of units) {
      for (const spelling of unit.spellings) {
        const read = readUnit(spelling, 0);
        const named = read?.unit === undefined ? read?.readings?.map((each) => each.unit) : [read.unit];
        expect([spelling, read?.end, named?.includes(unit)]).toEqual([spelling, spelling.length, true]);
      }
    }
  });
});

describe('nearest unit', () => {
  it.each([
    ['kap', 'kPa'],
    ['ft-lp', 'ft·lbf'],
    ['degress', '°'],
    ['milimetres', 'mm'],
    ['litters', 'L'],
    ['PSO', 'psi'],
  ])('%s is near %s', (typed, symbol) => {
    expect(nearestUnit(typed)?.symbol).toBe(symbol);
  });

  it.each(['x', 'cover-bolt', 'furlongs', ''])('nothing is near %j', (typed) => {
    expect(nearestUnit(typed)).toBeUndefined();
  });
});

describe('numbers', () => {
  it.each<[string, string, number, number, number]>([
    // text, value, end, significant, decimals
    ['115 N·m', '115', 3, 3, 0],
    ['22.0 mm', '22', 4, 3, 1],
    ['0.004 in', '0.004', 5, 1, 3],
    ['.5 L', '0.5', 2, 1, 1],
    ['14 300 lb', '14300', 6, 5, 0],
    ['1 234 567.5', '1234567.5', 11, 8, 1],
    ['14\u202f300 lb', '14300', 6, 5, 0],
    ['14 3000', '14', 2, 2, 0],
    ['2018 200', '2018', 4, 4, 0],
    ['5. Then', '5', 1, 1, 0],
    ['105-115', '105', 3, 3, 0],
    ['1, 2', '1', 1, 1, 0],
    ['1,2,3', '1', 1, 1, 0],
    ['100', '100', 3, 3, 0],
  ])('%s', (text, value, end, significant, decimals) => {
    const read = readNumber(text, 0);
    expect(read).toEqual({ end, value: rational(value), digits: { significant, decimals } });
  });

  it.each<[string, string, number, bigint]>([
    ['3/4"', '3/4', 3, 4n],
    ['6/8 in', '3/4', 3, 4n],
    ['1 1/2 turn', '3/2', 5, 2n],
    ['½ turn', '1/2', 1, 2n],
    ['1½', '3/2', 2, 2n],
    ['1 ½', '3/2', 3, 2n],
    ['3⁄16 in', '3/16', 4, 16n],
    ['1 125/1000', '9/8', 10, 8n],
    ['5/4', '5/4', 3, 4n],
  ])('the fraction %s', (text, value, end, denominator) => {
    const read = readNumber(text, 0);
    expect([read?.value, read?.end, read?.digits.denominator]).toEqual([rational(value), end, denominator]);
    expect(read?.problem).toBeUndefined();
  });

  it.each<[string, string, number, string[]]>([
    ['1,5 L', 'decimal-comma', 1.5, ['1.5']],
    ['0,250 mm', 'decimal-comma', 0.25, ['0.250']],
    ['14,300 lb', 'thousands-comma', 14300, ['14 300', '14.300']],
    ['1,234,567', 'thousands-comma', 1234567, ['1 234 567']],
    ['1,234.5', 'thousands-comma', 1234.5, ['1234.5']],
    ['1.234,5', 'decimal-comma', 1234.5, ['1234.5']],
    ['1-1/2 in', 'dashed-fraction', 1.5, ['1 1/2']],
  ])('%s is understood and reported', (text, problem, value, readings) => {
    const read = readNumber(text, 0);
    expect(read?.problem).toBe(problem);
    expect(read === undefined ? undefined : numberOf(read.value)).toBe(value);
    expect(read?.readings?.map((reading) => reading.text)).toEqual(readings);
  });

  it.each(['', 'x', '-5', '/2', '.', '. 5', ' 5'])('no number starts %j', (text) => {
    expect(readNumber(text, 0)).toBeUndefined();
  });

  it('does not divide by nothing', () => {
    expect(readNumber('1/0', 0)?.end).toBe(1);
  });
});

function kindOf(symbol: string): QuantityKind {
  return units.find((unit) => unit.symbol === symbol)?.kind ?? unitById('m').kind;
}
