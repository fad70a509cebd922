// Laws that hold for every value and unit.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  convertRounded,
  convertValue,
  type Digits,
  digitsFor,
  formatMeasure,
  type Measure,
  parseQuantity,
  parseUnit,
  Rational,
  readNumber,
  readUnit,
  roundTo,
  toSI,
  type Unit,
  units,
} from '../../language/src/quantity/index.js';

// One seed, so that a run can be repeated; raise numRuns by hand to search further.
fc.configureGlobal({ seed: 811 });

const anyUnit = fc.constantFrom(...units);
const unitPair = anyUnit.chain((from) => {
  const same = units.filter((to) => to.kind === from.kind);
  return fc.record({ from: fc.constant(from), to: fc.constantFrom(...same) });
});
const anyRational = fc
  .tuple(fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n }), fc.bigInt({ min: 1n, max: 10n ** 4n }))
  .map(([n, d]) => new Rational(n, d));

interface Written {
  readonly value: Rational;
  readonly digits: Digits;
}

/** Numbers as they can be written: decimals of any length, and fractions. */
const written: fc.Arbitrary<Written> = fc.oneof(
  fc.tuple(fc.integer({ min: 0, max: 10 ** 7 }), fc.integer({ min: 0, max: 5 })).map(([n, decimals]) => {
    const value = new Rational(BigInt(n), 10n ** BigInt(decimals));
    const significant = n
      .toString()
      .padStart(decimals + 1, '0')
      .replace(/^0+(?=\d)/, '').length;
    return { value, digits: { significant, decimals } };
  }),
  fc.tuple(fc.integer({ min: 1, max: 500 }), fc.constantFrom(2n, 3n, 4n, 8n, 16n, 32n, 64n)).map(([n, d]) => {
    const value = new Rational(BigInt(n), d);
    return {
      value,
      digits: {
        ...digitsFor(value),
        decimals: 0,
        significant: value.n.toString().length,
        ...(value.d === 1n ? {} : { denominator: value.d }),
      },
    };
  }),
);

const measureOf = (unit: Unit): fc.Arbitrary<Measure> =>
  fc.oneof(
    written.map((number): Measure => ({ form: 'amount', unit, ...number })),
    fc.tuple(written, written, written).map(
      ([number, minus, plus]): Measure => ({
        form: 'amount',
        unit,
        ...number,
        minus: minus.value,
        plus: plus.value,
      }),
    ),
    fc
      .tuple(written, fc.constantFrom<'least' | 'most'>('least', 'most'))
      .map(([number, side]): Measure => ({ form: 'bound', side, unit, ...number })),
    fc.tuple(written, written).map(([a, b]): Measure => {
      const [low, high] = a.value.compare(b.value) <= 0 ? [a, b] : [b, a];
      const alike =
        low.digits.decimals === high.digits.decimals && low.digits.denominator === high.digits.denominator;
      return {
        form: 'range',
        low: low.value,
        high: high.value,
        unit,
        digits: low.digits,
        ...(alike ? {} : { highDigits: high.digits }),
      };
    }),
  );

/** A measure without how its tolerance was typed and its significant digits, which no meaning hangs on. */
function meaning(measure: Measure): unknown {
  const plain = JSON.stringify(measure, (key, value: unknown) => {
    if (key === 'unit') return (value as Unit).id;
    if (key === 'toleranceDigits' || key === 'significant') return undefined;
    if (value instanceof Rational) return value.toFraction();
    return typeof value === 'bigint' ? value.toString() : value;
  });
  return JSON.parse(plain);
}

describe('laws', () => {
  it('a unit round trip is exact', () => {
    fc.assert(
      fc.property(unitPair, anyRational, ({ from, to }, value) => {
        expect(convertValue(convertValue(value, from, to), to, from)).toEqual(value);
      }),
    );
  });

  it('rounding moves a value by half a step at most, and in its direction', () => {
    fc.assert(
      fc.property(anyRational, fc.integer({ min: -3, max: 6 }), (value, decimals) => {
        const step = new Rational(10).pow(-decimals) ?? new Rational(1);
        const nearest = roundTo(value, decimals);
        expect(nearest.sub(value).abs().mul(2).compare(step)).toBeLessThanOrEqual(0);
        expect(roundTo(value, decimals, 'up').compare(value)).toBeGreaterThanOrEqual(0);
        expect(roundTo(value, decimals, 'down').compare(value)).toBeLessThanOrEqual(0);
        expect(roundTo(nearest, decimals)).toEqual(nearest);
      }),
    );
  });

  it('a converted limit never allows what the written one forbids', () => {
    const cases = unitPair.chain(({ from, to }) => fc.tuple(measureOf(from), fc.constant(to)));
    fc.assert(
      fc.property(cases, ([measure, to]) => {
        const before = toSI(measure);
        const after = toSI(convertRounded(measure, to));
        const isPoint =
          before.low !== undefined && before.high !== undefined && before.low.equals(before.high);
        if (isPoint) return;
        if (before.low !== undefined) expect(after.low?.compare(before.low)).toBeGreaterThanOrEqual(0);
        if (before.high !== undefined) expect(after.high?.compare(before.high)).toBeLessThanOrEqual(0);
        if (after.low !== undefined && after.high !== undefined) {
          expect(after.low.compare(after.high)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });

  it('what the formatter writes reads back as the same measure, and is written the same again', () => {
    fc.assert(
      fc.property(anyUnit.chain(measureOf), (measure) => {
        const text = formatMeasure(measure);
        const read = parseQuantity(text, { expected: [measure.unit.kind] });
        if ('problem' in read) throw new Error(`${text}: ${read.problem}`);
        expect(meaning(read.measure)).toEqual(meaning(measure));
        expect(formatMeasure(read.measure)).toBe(text);
      }),
      { numRuns: 300 },
    );
  });

  it('reading never throws, never stands still, never runs past the end', () => {
    const alphabet = fc.constantFrom(...'0123456789 ./,-½·°"\'%±+NmftlbinqtUS#to');
    fc.assert(
      fc.property(fc.array(alphabet, { maxLength: 24 }), (characters) => {
        const text = characters.join('');
        for (let at = 0; at < text.length; at += 1) {
          const number = readNumber(text, at);
          if (number !== undefined) expect(number.end > at && number.end <= text.length).toBe(true);
          const unit = readUnit(text, at);
          if (unit !== undefined) expect(unit.end > unit.start && unit.end <= text.length).toBe(true);
        }
        parseQuantity(text);
        parseUnit(text);
      }),
      { numRuns: 500 },
    );
  });
});
