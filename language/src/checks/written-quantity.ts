// What is wrong with one written quantity: the first fault only, for the rest are often its echoes. In this order:
// number, unit, missing unit, parts, range, dimension, tolerance, spelling that misleads, value out of all bounds.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import {
  ambiguousUnit,
  commaInNumber,
  dashedFraction,
  differenceForTemperature,
  misleadingUnit,
  missingUnit,
  partsOfAmount,
  rangeReversed,
  rangeTwoKinds,
  rangeTwoUnits,
  temperatureForDifference,
  toleranceReversed,
  toleranceTooWide,
  toleranceUnit,
  unknownUnit,
  wrongDimension,
} from '../diagnostics/quantities.js';
import type { WrittenQuantity } from '../names/quantities.js';
import {
  convertRounded,
  formatMeasure,
  formatNumber,
  nearestUnit,
  type QuantityKind,
  quantityKinds,
  rational,
  readingsFor,
  type Unit,
  unitById,
  unitText,
  usualUnits,
} from '../quantity/index.js';
import type { AmountNode, MeasureNode, UnitNode } from '../syntax/tree.js';
import type { Span } from '../text/span.js';

/** Units whose short forms stand for something else in other capitals or places. */
const MISLEADING = new Set(['nm', 'NM', 'M', 'mil', 'T']);

export function faultOf(quantity: WrittenQuantity, file: string, text: string): Finding | undefined {
  const { node } = quantity;
  const at = new Writer(file, text);
  const { amounts } = node;
  for (const amount of amounts) {
    const fault = numberFault(amount, at);
    if (fault) return fault;
  }
  for (const amount of amounts) {
    const fault = unitFault(amount.unit, quantity, at) ?? unitFault(amount.tolerance?.unit, quantity, at);
    if (fault) return fault;
  }
  return (
    unitMissing(quantity, at) ??
    partsFault(node, at) ??
    rangeFault(node, at) ??
    dimensionFault(quantity, at) ??
    toleranceFault(quantity, at) ??
    reversed(node, at) ??
    misleading(quantity, at)
  );
}

/** The file a fault is in, with short ways to quote it and to change it. */
class Writer {
  constructor(
    readonly file: string,
    readonly text: string,
  ) {}

  quote(span: Span): string {
    return this.text.slice(span.start, span.end).replace(/\s+/g, ' ');
  }

  place(span: Span, fixes: readonly Fix[] = []): { file: string; span: Span; fixes: readonly Fix[] } {
    return { file: this.file, span: { start: span.start, end: span.end }, fixes };
  }

  /** A fix that writes `text` at `span`; its title shows the whole quantity as it will stand. */
  write(span: Span, text: string, preferred = false, whole: Span = span): Fix {
    const title = `Write \`${(this.text.slice(whole.start, span.start) + text + this.text.slice(span.end, whole.end)).trim()}\``;
    const edits = [{ file: this.file, span: { start: span.start, end: span.end }, text }];
    return preferred ? { title, edits, preferred: true } : { title, edits };
  }
}

function numberFault({ number }: AmountNode, at: Writer): Finding | undefined {
  if (number.problem === undefined) return undefined;
  const written = at.quote(number);
  const readings = number.readings.map(({ text }) => text);
  const fixes = readings.map((text) => at.write(number, text, readings.length === 1));
  const place = at.place(number, fixes);
  if (number.problem === 'dashed-fraction')
    return finding(dashedFraction, place, { written, reading: readings[0] ?? written });
  return finding(commaInNumber, place, { written, readings });
}

function unitFault(
  unit: UnitNode | undefined,
  { expected, node }: WrittenQuantity,
  at: Writer,
): Finding | undefined {
  if (unit === undefined || unit.unit !== undefined) return undefined;
  const { kinds } = expected;
  if (unit.readings.length === 0) {
    const near = nearestUnit(unit.spelling, kinds);
    const fits = near !== undefined && (kinds?.includes(near.kind) ?? true);
    // `at 4 places`: where things are counted, the word says what.
    if (kinds?.includes('count') && near === undefined) return undefined;
    const offered = near && fits ? [near] : kinds ? usualUnits(kinds) : [];
    const fixes = offered.map((each) => at.write(unit, each.symbol, fits, node));
    return finding(unknownUnit, at.place(unit, fixes), {
      spelling: unit.spelling,
      near: fits ? near?.symbol : undefined,
    });
  }
  const readings = readingsFor(unit, kinds);
  const isWanted = kinds === undefined || readings.some((reading) => kinds.includes(reading.unit.kind));
  if (!isWanted && kinds) {
    const found = quantityKinds[readings[0]?.unit.kind ?? 'count'].phrase;
    return finding(wrongDimension, at.place(node, kindFixes(node, kinds, at)), {
      written: at.quote(node),
      found,
      ...wanted(kinds),
    });
  }
  const fixes = readings.map((reading) => at.write(unit, reading.unit.symbol, false, node));
  return finding(ambiguousUnit, at.place(unit, fixes), {
    spelling: unit.spelling,
    meanings: readings.map((each) => each.meaning),
  });
}

/** A number that neither has a unit nor stands before one that serves it. */
function unitMissing(
  { node, expected, spec, stage, word }: WrittenQuantity,
  at: Writer,
): Finding | undefined {
  if (expected.unitless || node.measure !== undefined || node.problem !== undefined) return undefined;
  if (spec?.stages.slice(stage + 1).some(({ measure }) => !measure.hole && measure.measure === undefined))
    return undefined;
  const bare =
    node.form === 'range'
      ? node.amounts[1]?.unit
        ? undefined
        : node.amounts[1]
      : node.amounts.find((each) => !each.unit);
  if (!bare || bare.number.hole || word === 'of') return undefined;
  const kinds = expected.kinds ?? [];
  const end = bare.tolerance?.end ?? bare.number.end;
  const value = bare.number.value ?? rational(0);
  const before = node.amounts[node.amounts.indexOf(bare) - 1];
  const parts = node.form !== 'range' ? before?.unit?.unit : undefined;
  const units = parts?.kind === 'time' ? [unitById(parts.id === 'min' ? 's' : 'min')] : usualUnits(kinds);
  const fixes = units.map((unit) => at.write({ start: end, end }, unitText(unit, value), false, node));
  const number = at.quote({ start: node.start, end });
  const [kind] = kinds;
  return finding(missingUnit, at.place(node, fixes), {
    number,
    wanted: kinds.length === 0 ? 'a value with its unit' : phrases(kinds),
    example: quantityKinds[kind ?? 'length'].example,
  });
}

function partsFault(node: MeasureNode, at: Writer): Finding | undefined {
  if (node.problem === undefined) return undefined;
  const turned = [...node.amounts]
    .reverse()
    .map((each) => at.quote(each))
    .join(' ');
  const fixes =
    node.problem === 'not-falling' && node.amounts.length === 2 ? [at.write(node, turned, true)] : [];
  return finding(partsOfAmount, at.place(node, fixes), { written: at.quote(node), problem: node.problem });
}

function rangeFault(node: MeasureNode, at: Writer): Finding | undefined {
  const [low, high] = node.amounts;
  const first = low?.unit?.unit;
  const second = high?.unit?.unit;
  if (node.form !== 'range' || !low || !high || !first || !second || first === second) return undefined;
  if (first.kind !== second.kind) {
    const gap = { start: low.number.end, end: low.unit?.end ?? low.number.end };
    return finding(
      rangeTwoKinds,
      at.place(node, [
        at.write(gap, '', false, node),
        at.write(high.unit ?? high, first.symbol, false, node),
      ]),
      { first: quantityKinds[first.kind].phrase, second: quantityKinds[second.kind].phrase },
    );
  }
  const fix =
    low.number.value && low.number.digits
      ? at.write(
          low,
          formatMeasure(
            convertRounded(
              { form: 'amount', value: low.number.value, unit: first, digits: low.number.digits },
              second,
            ),
          ),
          false,
          node,
        )
      : undefined;
  return finding(rangeTwoUnits, at.place(node, fix ? [fix] : []), {
    first: first.symbol,
    second: second.symbol,
  });
}

function dimensionFault({ node, expected: { kinds } }: WrittenQuantity, at: Writer): Finding | undefined {
  const unit = node.measure?.unit;
  if (!unit || !kinds || kinds.includes(unit.kind)) return undefined;
  const written = at.quote(node);
  const change = (id: string): Fix[] =>
    unitsIn(node)
      .map((each) => at.write(each, unitById(id).symbol, true, node))
      .slice(0, 1);
  if (unit.kind === 'temperature difference' && kinds.includes('temperature')) {
    return finding(differenceForTemperature, at.place(node, change(unit.id === 'K' ? 'degC' : 'degF')), {
      written,
    });
  }
  if (unit.kind === 'temperature' && kinds.includes('temperature difference')) {
    return finding(
      temperatureForDifference,
      at.place(node, change(unit.id === 'degC' ? 'K' : 'delta-degF')),
      { written },
    );
  }
  return finding(wrongDimension, at.place(node, kindFixes(node, kinds, at)), {
    written,
    found: quantityKinds[unit.kind].phrase,
    ...wanted(kinds),
  });
}

function toleranceFault({ node, thing }: WrittenQuantity, at: Writer): Finding | undefined {
  for (const { tolerance, unit, number } of node.amounts) {
    if (!tolerance) continue;
    const own = tolerance.unit?.unit;
    if (own && unit?.unit && own !== unit.unit && !tolerance.percent) {
      return finding(toleranceUnit, at.place(node, toleranceFixes(node, at)), {
        tolerance: own.symbol,
        unit: unit.unit.symbol,
      });
    }
    if (tolerance.reversed) {
      const side = { start: tolerance.start, end: tolerance.numberEnd };
      const mended = `+${formatNumber(tolerance.plus, PLAIN)}/-${formatNumber(tolerance.minus, PLAIN)}`;
      return finding(toleranceReversed, at.place(side, [at.write(side, mended, true)]), {
        written: at.quote(side),
        mended,
      });
    }
    const widest = tolerance.percent ? rational(100) : number.value?.abs();
    // A toe of 0.05 ±0.10° is right: what is measured about nothing may lie on both sides of it.
    const mayCross = thing?.kind === 'limit' || unit?.unit?.kind === 'temperature';
    if (!mayCross && widest && widest.n !== 0n && tolerance.minus.compare(widest) > 0) {
      const extent = tolerance.percent
        ? `${formatNumber(tolerance.minus, PLAIN)} %`
        : `${formatNumber(tolerance.minus, PLAIN)}${unit?.unit ? unitText(unit.unit, tolerance.minus) : ''}`;
      return finding(toleranceTooWide, at.place(node), {
        tolerance: extent,
        value: valueText(number.value, unit?.unit),
      });
    }
  }
  return undefined;
}

/** Writes the tolerance in the unit of its value, where one factor leads from the one to the other. */
function toleranceFixes({ amounts: [amount] }: MeasureNode, at: Writer): Fix[] {
  const to = amount?.unit?.unit;
  const from = amount?.tolerance?.unit?.unit;
  const tolerance = amount?.tolerance;
  if (
    !to ||
    !from ||
    !tolerance ||
    to.offset !== undefined ||
    from.offset !== undefined ||
    to.kind !== from.kind
  )
    return [];
  const turned = (value: typeof tolerance.plus) =>
    convertRounded({ form: 'amount', value, unit: from, digits: tolerance.digits ?? PLAIN }, to);
  const [plus, minus] = [turned(tolerance.plus), turned(tolerance.minus)];
  if (plus.form !== 'amount' || minus.form !== 'amount') return [];
  const upper = formatNumber(plus.value, plus.digits);
  const text =
    plus.value.compare(minus.value) === 0
      ? `±${upper}`
      : `+${upper}/-${formatNumber(minus.value, minus.digits)}`;
  return [at.write(tolerance, `${text}${unitText(to, plus.value)}`, true)];
}

const PLAIN = { significant: 1, decimals: 0 };

function reversed(node: MeasureNode, at: Writer): Finding | undefined {
  const measure = node.measure;
  const [low, high] = node.amounts;
  if (measure?.form !== 'range' || measure.low.compare(measure.high) <= 0 || !low || !high) return undefined;
  const swap: Fix = {
    title: `Write \`${at.quote(high.number)} to ${at.quote(low.number)}${unitText(measure.unit, measure.low)}\``,
    edits: [
      { file: at.file, span: { start: low.number.start, end: low.number.end }, text: at.quote(high.number) },
      { file: at.file, span: { start: high.number.start, end: high.number.end }, text: at.quote(low.number) },
    ],
    preferred: true,
  };
  return finding(rangeReversed, at.place(node, [swap]), {
    low: at.quote(low.number),
    high: at.quote(high.number),
  });
}

function misleading({ node }: WrittenQuantity, at: Writer): Finding | undefined {
  for (const unit of unitsIn(node)) {
    if (!unit.unit || !MISLEADING.has(unit.spelling)) continue;
    const other = unit.readings.find(
      (reading) => reading.unit !== unit.unit && reading.unit.kind !== unit.unit?.kind,
    );
    if (!other) continue;
    return finding(misleadingUnit, at.place(unit, [at.write(unit, unit.unit.symbol, true, node)]), {
      spelling: unit.spelling,
      symbol: unit.unit.symbol,
      other: other.meaning,
    });
  }
  return undefined;
}

function unitsIn(node: MeasureNode): UnitNode[] {
  return node.amounts.map((each) => each.unit).filter((unit) => unit !== undefined);
}

/** One fix for each unit that fits the place, in the place of the one written. */
function kindFixes(node: MeasureNode, kinds: readonly QuantityKind[], at: Writer): Fix[] {
  const [amount] = node.amounts.filter((each) => each.unit);
  if (!amount?.unit || unitsIn(node).length > 1) return [];
  const before = {
    start:
      amount.unit.start > (amount.tolerance?.end ?? 0)
        ? (amount.tolerance?.numberEnd ?? amount.number.end)
        : amount.number.end,
    end: amount.unit.end,
  };
  return usualUnits(kinds).map((unit) =>
    at.write(before, unitText(unit, amount.number.value ?? rational(0)), false, node),
  );
}

function wanted(kinds: readonly QuantityKind[]): { wanted: string; example: string } {
  return { wanted: phrases(kinds), example: quantityKinds[kinds[0] ?? 'length'].example };
}

/** `a torque or an angle`. */
function phrases(kinds: readonly QuantityKind[]): string {
  const words = kinds.map((kind) => quantityKinds[kind].phrase);
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

function valueText(value: AmountNode['number']['value'], unit: Unit | undefined): string {
  return value === undefined
    ? 'its value'
    : `${formatNumber(value, PLAIN)}${unit ? unitText(unit, value) : ''}`;
}
