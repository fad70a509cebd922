/**
 * Reads a whole quantity from a text: for the command line, for settings, for a value in prose. Files go through
 * the syntax, which reads the same numbers and units; here a text stands alone and the first problem ends it.
 */
import type { QuantityKind } from './dimension.js';
import { type Amount, type AmountPart, foldParts, type Measure, withPercent } from './measure.js';
import { nearestUnit } from './nearest-unit.js';
import { type Rational, rational } from './rational.js';
import { type Digits, type NumberReading, readNumber } from './read-number.js';
import { isSpace, type ReadUnit, readingsFor, readUnit, resolveUnit } from './read-unit.js';
import type { Unit } from './unit.js';

export interface QuantityOptions {
  /** The kinds wanted here; they decide an ambiguous spelling where they can. */
  readonly expected?: readonly QuantityKind[];
}

/** Why a text is no quantity, in the reader's words, and what could be written instead. */
export interface QuantityProblem {
  readonly problem: string;
  /** Texts to write instead, one per reading. */
  readonly readings?: readonly string[];
}

/** Reads one measure: `85 in-lb`, `115 ±10 N·m`, `105 to 115 N·m`, `at least 5 mm`, `1 h 40 min`. */
export function parseQuantity(
  text: string,
  options: QuantityOptions = {},
): { measure: Measure } | QuantityProblem {
  return guarded(() => {
    const reader = new Reader(text, options);
    const measure = reader.measure();
    reader.expectEnd();
    return { measure };
  });
}

/** Reads a unit that stands alone: the target of a conversion, a column's heading. */
export function parseUnit(text: string, options: QuantityOptions = {}): { unit: Unit } | QuantityProblem {
  return guarded(() => {
    const written = text.trim();
    const read = readUnit(written, 0);
    if (read === undefined || read.end < written.length) throw unknownUnit(written);
    return { unit: unitMeant(read, options.expected) };
  });
}

class Problem {
  constructor(readonly report: QuantityProblem) {}
}

function guarded<T>(read: () => T): T | QuantityProblem {
  try {
    return read();
  } catch (error) {
    if (error instanceof Problem) return error.report;
    throw error;
  }
}

interface WrittenNumber {
  readonly value: Rational;
  readonly digits: Digits;
  /** A minus sign is written, which a zero does not keep. */
  readonly isNegative: boolean;
}

/** The place reached in a text. */
class Reader {
  private at = 0;

  constructor(
    private readonly text: string,
    private readonly options: QuantityOptions,
  ) {}

  measure(): Measure {
    for (const [words, side] of bounds) {
      if (!this.word(words)) continue;
      const { value, digits } = this.number();
      return { form: 'bound', side, value, unit: this.unit(), digits };
    }
    const first = this.number();
    const tolerance = this.tolerance();
    if (tolerance !== undefined) return this.withTolerance(first, tolerance);
    const beforeUnit = this.at;
    const unit = this.unitIfAny();
    if (unit === undefined) {
      if (this.word('to') || this.rangeDash()) return this.range(first, undefined);
      this.at = beforeUnit;
      return this.amount(this.compound(first, this.unit()));
    }
    const amount = this.compound(first, unit);
    return this.word('to') || this.rangeDash() ? this.range(amount, amount.unit) : this.amount(amount);
  }

  word(word: string): boolean {
    const start = this.skip();
    const end = start + word.length;
    if (this.text.slice(start, end).toLowerCase() !== word) return false;
    if (end < this.text.length && !isSpace(this.text.charCodeAt(end))) return false;
    this.at = end;
    return true;
  }

  expectEnd(): void {
    const rest = this.text.slice(this.skip()).trim();
    if (rest !== '')
      throw new Problem({ problem: `"${rest}" after the quantity is not understood: leave it out` });
  }

  /** `1 h` and what follows of it. The sign in front is that of the whole: -1°30′ is half a degree below -1°. */
  private compound({ value, digits, isNegative }: WrittenNumber, unit: Unit): Amount {
    const parts: AmountPart[] = [{ value, digits, unit }];
    while (readNumber(this.text, this.skip()) !== undefined) {
      const next = this.number();
      parts.push({
        value: isNegative ? next.value.neg() : next.value,
        digits: next.digits,
        unit: this.unit([unit.kind]),
      });
    }
    const folded = foldParts(parts);
    if ('problem' in folded) throw new Problem({ problem: compoundProblems[folded.problem] });
    return folded;
  }

  private amount(amount: Amount): Measure {
    const tolerance = this.tolerance();
    return tolerance === undefined ? amount : this.applied(amount, tolerance);
  }

  private range(first: Pick<WrittenNumber, 'value' | 'digits'>, unitBefore: Unit | undefined): Measure {
    const last = this.compound(this.number(), this.unit());
    const { unit } = last;
    if (unitBefore !== undefined && unitBefore !== unit) {
      throw new Problem({ problem: `a range has one unit, written after its second value: ${unit.symbol}` });
    }
    if (first.value.compare(last.value) > 0) {
      throw new Problem({ problem: 'the range runs backwards: write the smaller value first' });
    }
    const { value: low, digits } = first;
    const alike = sameDigits(digits, last.digits);
    return {
      form: 'range',
      low,
      high: last.value,
      unit,
      digits,
      ...(alike ? {} : { highDigits: last.digits }),
    };
  }

  private withTolerance({ value, digits }: WrittenNumber, tolerance: Tolerance): Measure {
    const unit = this.unit();
    return this.applied({ form: 'amount', value, unit, digits }, tolerance);
  }

  /** The tolerance after a value; a `%` or the unit itself may follow it. */
  private applied(amount: Amount, tolerance: Tolerance): Amount {
    const { minus, plus, digits } = tolerance;
    const after = readUnit(this.text, this.at);
    if (after?.unit?.kind === 'ratio' && amount.unit.kind !== 'ratio') {
      this.at = after.end;
      return withPercent(amount, minus, plus, digits);
    }
    if (after !== undefined && resolveUnit(after, [amount.unit.kind]) === amount.unit) this.at = after.end;
    return { ...amount, minus, plus, ...(digits === undefined ? {} : { toleranceDigits: digits }) };
  }

  private tolerance(): Tolerance | undefined {
    const start = this.skip();
    for (const sign of ['±', '+/-', '+-']) {
      if (!this.text.startsWith(sign, start)) continue;
      this.at = start + sign.length;
      const { value, digits } = this.number();
      return { minus: value, plus: value, ...kept(value, digits) };
    }
    if (this.text[start] !== '+') return undefined;
    this.at = start + 1;
    const plus = this.number();
    const slash = this.skip();
    this.at = this.text[slash] === '/' ? slash + 1 : slash;
    if (!this.minusSign()) throw new Problem({ problem: 'a tolerance is written +10/-5 or ±10' });
    return { minus: this.number().value, plus: plus.value };
  }

  private number(): WrittenNumber {
    const isNegative = this.minusSign();
    const read = readNumber(this.text, this.skip());
    if (read === undefined) {
      const rest = this.text.slice(this.at).trim();
      const found = rest === '' ? 'nothing is written' : `"${rest}" is no number`;
      throw new Problem({ problem: `${found}: write a number with its unit, as in 85 in·lbf` });
    }
    if (read.problem !== undefined)
      throw numberProblem(this.text.slice(this.at, read.end), read.readings ?? []);
    this.at = read.end;
    return { value: isNegative ? read.value.neg() : read.value, digits: read.digits, isNegative };
  }

  private unit(expected = this.options.expected): Unit {
    const read = readUnit(this.text, this.at);
    if (read === undefined) throw unknownUnit(this.text.slice(this.skip()).trim());
    this.at = read.end;
    return unitMeant(read, expected);
  }

  private unitIfAny(): Unit | undefined {
    return readUnit(this.text, this.at) === undefined ? undefined : this.unit();
  }

  private minusSign(): boolean {
    const start = this.skip();
    if (!'-−–'.includes(this.text.charAt(start)) || start >= this.text.length) return false;
    this.at = start + 1;
    return true;
  }

  private rangeDash(): boolean {
    return this.minusSign();
  }

  private skip(): number {
    while (isSpace(this.text.charCodeAt(this.at))) this.at += 1;
    return this.at;
  }
}

interface Tolerance {
  readonly minus: Rational;
  readonly plus: Rational;
  readonly digits?: Digits;
}

const bounds = [
  ['at least', 'least'],
  ['at most', 'most'],
] as const;

const compoundProblems = {
  'cannot-follow': 'these units do not go together in one amount: only h min s, ft in, lb oz and the like do',
  'not-falling': 'write the larger unit first, as in 1 h 40 min',
  'not-whole': 'only the last part may have decimals, as in 5 ft 6.5 in',
} as const;

/** Digits are kept only where the value alone would be written otherwise. */
function kept(value: Rational, digits: Digits): { digits?: Digits } {
  const isPlain =
    digits.denominator === undefined &&
    rational(10n).pow(digits.decimals).mul(value).d === 1n &&
    digits.decimals === 0;
  return isPlain ? {} : { digits };
}

function unitMeant(read: ReadUnit, expected: readonly QuantityKind[] | undefined): Unit {
  const unit = resolveUnit(read, expected);
  if (unit !== undefined) return unit;
  const readings = readingsFor(read, expected);
  const listed = readings.map((each) => `${each.meaning} (${each.unit.symbol})`).join('; ');
  throw new Problem({
    problem: `"${read.spelling}" can mean more than one unit: ${listed}. Write the one you mean`,
    readings: readings.map((each) => each.unit.symbol),
  });
}

function unknownUnit(written: string): Problem {
  if (written === '')
    return new Problem({ problem: 'the unit is missing: write it after the number, as in 85 in·lbf' });
  const near = nearestUnit(written);
  if (near === undefined) return new Problem({ problem: `"${written}" is not a unit that is known here` });
  return new Problem({
    problem: `"${written}" is not a unit that is known here; the nearest is ${near.symbol}`,
    readings: [near.symbol],
  });
}

function numberProblem(written: string, readings: readonly NumberReading[]): Problem {
  const texts = readings.map((reading) => reading.text);
  return new Problem({
    problem: `"${written}" can be misread: write ${texts.join(' or ')}`,
    readings: texts,
  });
}

function sameDigits(a: Digits, b: Digits): boolean {
  return a.decimals === b.decimals && a.denominator === b.denominator;
}
