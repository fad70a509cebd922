// Builds the nodes of quantities from tokens: what was written, and the measure it means where it means one.
import type { IToken } from 'chevrotain';
import {
  type Amount,
  type Digits,
  foldParts,
  type Measure,
  type QuantityKind,
  resolveUnit,
  type Unit,
  unitById,
  withPercent,
} from '../quantity/index.js';
import { type Span, span } from '../text/span.js';
import type { NumberPayload, TolerancePayload, UnitPayload } from './patterns.js';
import { Count, endOf, Hole, TolerancePair, UnitToken } from './tokens.js';
import type { AmountNode, MeasureNode, NumberNode, ToleranceNode, UnitNode } from './tree.js';

/** The tokens of one amount: `115 ±10 N·m`. */
export interface AmountTokens {
  readonly number: IToken;
  /** Units and words where a unit may stand, and the tolerance, in their order. */
  readonly rest: readonly IToken[];
}

/** A number, `?`, or the count before `of`. */
export function numberNode(token: IToken, base: number): NumberNode {
  const start = base + token.startOffset;
  if (token.tokenType === Hole || (token.tokenType === Count && token.payload === undefined)) {
    return {
      start,
      end: start + 1,
      value: undefined,
      negative: false,
      digits: undefined,
      hole: true,
      problem: undefined,
      readings: [],
    };
  }
  const { read, negative } = token.payload as NumberPayload;
  const length = token.tokenType === Count ? token.image.search(/\s*of$/) : token.image.length;
  return {
    start,
    end: start + length,
    value: negative ? read.value.neg() : read.value,
    negative,
    digits: read.digits,
    hole: false,
    problem: read.problem,
    readings: read.readings ?? [],
  };
}

export function amountNode({ number, rest }: AmountTokens, base: number): AmountNode {
  const node = numberNode(number, base);
  const before: UnitNode[] = [];
  const after: UnitNode[] = [];
  let tolerance: Omit<ToleranceNode, 'percent' | 'unit' | 'end'> | undefined;
  let end = endOf(number);
  for (let i = 0; i < rest.length; i++) {
    const token = rest[i];
    if (token === undefined) break;
    end = endOf(token);
    if (token.tokenType === TolerancePair) {
      const { plus, minus, reversed } = token.payload as TolerancePayload;
      tolerance = {
        start: base + token.startOffset,
        numberEnd: base + end,
        plus: plus.value,
        minus: minus.value,
        digits: plus.digits,
        reversed,
      };
    } else if (token.tokenType.name === 'PlusMinus') {
      const value = rest[i + 1];
      if (value === undefined) continue;
      const { read } = value.payload as NumberPayload;
      end = endOf(value);
      tolerance = {
        start: base + token.startOffset,
        numberEnd: base + end,
        plus: read.value,
        minus: read.value,
        digits: read.digits,
        reversed: false,
      };
      i += 1;
    } else (tolerance === undefined ? before : after).push(unitNode(token, base));
  }
  const percent = after.find((unit) => unit.unit === PER_CENT);
  const isShare = percent !== undefined && (before.length > 0 || after.length > 1);
  const others = isShare ? after.filter((unit) => unit !== percent) : after;
  const unit = before[0] ?? others[0];
  const own = before.length > 0 ? others[0] : undefined;
  const toleranceEnd = after[0]?.end ?? base + end;
  return {
    start: node.start,
    end: base + end,
    number: node,
    unit,
    tolerance: tolerance && {
      ...tolerance,
      end: toleranceEnd,
      percent: isShare,
      unit: isShare ? percent : own,
    },
  };
}

/** The amounts of a compound with each doubtful unit read by the one before it: the `'` behind degrees is no foot. */
export function compoundNodes(amounts: readonly AmountNode[]): readonly AmountNode[] {
  // Nearly every quantity is one amount, which nothing before it settles.
  if (amounts.length === 1 && amounts[0]?.tolerance?.unit === undefined) return amounts;
  let kind: QuantityKind | undefined;
  const meant = amounts.map((amount): AmountNode => {
    const unit = amount.unit && unitAfter(amount.unit, kind);
    kind = unit?.unit?.kind;
    const { tolerance } = amount;
    return {
      ...amount,
      unit,
      tolerance: tolerance?.unit ? { ...tolerance, unit: unitAfter(tolerance.unit, kind) } : tolerance,
    };
  });
  return withToleranceFolded(meant);
}

const unitAfter = (unit: UnitNode, kind: QuantityKind | undefined): UnitNode =>
  kind !== undefined && unit.unit === undefined && unit.readings.length > 0
    ? { ...unit, unit: resolveUnit(unit, [kind]) }
    : unit;

/** A tolerance in two parts too: the `±0°05′` behind `0°10′`. */
function withToleranceFolded(amounts: readonly AmountNode[]): readonly AmountNode[] {
  const [part, rest] = amounts.slice(-2);
  const { tolerance } = part ?? {};
  const { value, digits } = rest?.number ?? {};
  const [first, last] = [tolerance?.unit?.unit, rest?.unit];
  if (!part || !rest || !tolerance || !first || !last?.unit || !value || !digits || rest.tolerance)
    return amounts;
  if (!tolerance.digits || tolerance.percent || tolerance.plus.compare(tolerance.minus) !== 0) return amounts;
  const folded = foldParts([
    { value: tolerance.plus, digits: tolerance.digits, unit: first },
    { value, digits, unit: last.unit },
  ]);
  if ('problem' in folded || folded.unit !== part.unit?.unit) return amounts;
  const whole = { ...tolerance, plus: folded.value, minus: folded.value, digits, unit: last };
  const { end } = rest;
  return [
    ...amounts.slice(0, -2),
    { ...part, end, tolerance: { ...whole, numberEnd: rest.number.end, end } },
  ];
}

/** The end of a range as one amount in its last unit; undefined where its parts do not go together. */
export function foldedNode(amounts: readonly AmountNode[]): AmountNode | undefined {
  const [first] = amounts;
  const last = amounts.at(-1);
  if (!first || !last || amounts.length === 1) return first;
  if (amounts.some(({ tolerance }) => tolerance !== undefined)) return undefined;
  const { measure } = amountMeaning(amounts, undefined, undefined);
  if (measure?.form !== 'amount') return undefined;
  return {
    ...last,
    start: first.start,
    number: { ...last.number, start: first.start, value: measure.value, negative: first.number.negative },
  };
}

/** An amount, bound or compound amount. */
export function amountsNode(
  amounts: readonly AmountNode[],
  bound: 'least' | 'most' | undefined,
  place: Span,
): MeasureNode {
  const hole = amounts.some(({ number }) => number.hole);
  const base = {
    ...place,
    hole,
    form: bound === undefined ? ('amount' as const) : ('bound' as const),
    bound,
    amounts,
  };
  return { ...base, ...amountMeaning(amounts, bound, undefined) };
}

export function rangeNode(low: AmountNode, high: AmountNode, place: Span): MeasureNode {
  const amounts = [low, high];
  const measure = rangeMeaning(low, high, undefined);
  return {
    ...place,
    hole: amounts.some(({ number }) => number.hole),
    form: 'range',
    bound: undefined,
    amounts,
    measure,
    problem: undefined,
  };
}

/** The same quantity when a unit written behind it serves it too: the first of `15 then 40 ft·lbf`. */
export function withUnit(node: MeasureNode, unit: Unit): MeasureNode {
  if (node.measure !== undefined || node.amounts.some((amount) => amount.unit !== undefined)) return node;
  const [low, high] = node.amounts;
  if (node.form === 'range') return low && high ? { ...node, measure: rangeMeaning(low, high, unit) } : node;
  return { ...node, ...amountMeaning(node.amounts, node.bound, unit) };
}

const PER_CENT = unitById('percent');

function unitNode(token: IToken, base: number): UnitNode {
  const place = span(base + token.startOffset, base + endOf(token));
  if (token.tokenType !== UnitToken)
    return { ...place, spelling: token.image, unit: undefined, readings: [] };
  const read = token.payload as UnitPayload;
  return { ...place, spelling: read.spelling, unit: read.unit, readings: read.readings ?? [] };
}

interface Meaning {
  readonly measure: Measure | undefined;
  readonly problem: MeasureNode['problem'];
}

const NOTHING: Meaning = { measure: undefined, problem: undefined };

function amountMeaning(
  amounts: readonly AmountNode[],
  bound: 'least' | 'most' | undefined,
  unit: Unit | undefined,
): Meaning {
  const parts = [];
  const isNegative = amounts[0]?.number.negative ?? false;
  for (const { number, unit: written } of amounts) {
    const known = written === undefined ? unit : written.unit;
    if (number.value === undefined || number.digits === undefined || known === undefined) return NOTHING;
    // The sign in front is that of the whole: -1°30′ is half a degree below -1°.
    const value = isNegative ? number.value.abs().neg() : number.value;
    parts.push({ value, digits: number.digits, unit: known });
  }
  const folded = foldParts(parts);
  if ('problem' in folded) return { measure: undefined, problem: folded.problem };
  if (bound !== undefined) {
    const { value, unit: in_, digits } = folded;
    return { measure: { form: 'bound', side: bound, value, unit: in_, digits }, problem: undefined };
  }
  const tolerance = amounts.at(-1)?.tolerance;
  return {
    measure: tolerance === undefined ? folded : tolerated(folded, tolerance),
    problem: undefined,
  };
}

/** Undefined where the tolerance has a unit of its own that is not the amount's. */
function tolerated(
  amount: Amount,
  { plus, minus, digits, percent, unit }: ToleranceNode,
): Measure | undefined {
  if (percent) return withPercent(amount, minus, plus, keptDigits(digits));
  if (unit !== undefined && unit.unit !== amount.unit) return undefined;
  const kept = keptDigits(digits);
  return { ...amount, plus, minus, ...(kept === undefined ? {} : { toleranceDigits: kept }) };
}

/** Digits are kept only where the value alone would be written otherwise. */
function keptDigits(digits: Digits | undefined): Digits | undefined {
  return digits !== undefined && (digits.decimals > 0 || digits.denominator !== undefined)
    ? digits
    : undefined;
}

function rangeMeaning(low: AmountNode, high: AmountNode, outer: Unit | undefined): Measure | undefined {
  const unit = high.unit === undefined ? outer : high.unit.unit;
  const lowUnit = low.unit === undefined ? unit : low.unit.unit;
  const { number: a } = low;
  const { number: b } = high;
  if (unit === undefined || lowUnit !== unit || low.tolerance !== undefined || high.tolerance !== undefined)
    return undefined;
  if (a.value === undefined || b.value === undefined || a.digits === undefined || b.digits === undefined)
    return undefined;
  const alike = a.digits.decimals === b.digits.decimals && a.digits.denominator === b.digits.denominator;
  return {
    form: 'range',
    low: a.value,
    high: b.value,
    unit,
    digits: a.digits,
    ...(alike ? {} : { highDigits: b.digits }),
  };
}
