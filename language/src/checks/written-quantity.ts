// What is wrong with one written quantity: the first fault only, for the rest are often its echoes. In this order:
// number, unit, missing unit, parts, range, dimension, tolerance, spelling that misleads.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import {
  ambiguousUnit,
  commaInNumber,
  dashedFraction,
  differenceForTemperature,
  misleadingUnit,
  missingUnit,
  partsOfAmount,
  temperatureForDifference,
  unknownUnit,
  wrongDimension,
} from '../diagnostics/quantities.js';
import type { WrittenQuantity } from '../names/quantities.js';
import {
  definiteSpelling,
  nearestUnit,
  type QuantityKind,
  quantityKinds,
  rational,
  readingsFor,
  unitById,
  unitText,
  usualUnits,
} from '../quantity/index.js';
import type { AmountNode, MeasureNode, UnitNode } from '../syntax/tree.js';
import { HEADS_SAID } from '../vocabulary/heads-said.js';
import { kindFixes, phrases, unitsIn, type Writer, wanted, writerOf } from './quantity-writer.js';
import { rangeBackwards, rangeFault } from './range-fault.js';
import { toleranceFault } from './tolerance-fault.js';

const BOUNDS: ReadonlySet<string> = new Set(['at most', 'at least']);

/** Units whose short forms stand for something else in other capitals or places. */
const MISLEADING = new Set(['nm', 'NM', 'M', 'mil', 'T']);

export function faultOf(quantity: WrittenQuantity, file: string, text: string): Finding | undefined {
  const { node } = quantity;
  const at = writerOf(file, text);
  const { amounts } = node;
  for (const amount of amounts) {
    const fault = numberFault(amount, quantity, at);
    if (fault) return fault;
  }
  for (const amount of amounts) {
    const fault = unitFault(amount.unit, quantity, at) ?? unitFault(amount.tolerance?.unit, quantity, at);
    if (fault) return fault;
  }
  return (
    unitMissing(quantity, at) ??
    leastMeant(quantity, at) ??
    partsFault(node, at) ??
    rangeFault(node, at) ??
    dimensionFault(quantity, at) ??
    toleranceFault(quantity, at) ??
    rangeBackwards(node, at) ??
    misleading(quantity, at)
  );
}

function numberFault(
  { number, unit, tolerance }: AmountNode,
  { node, expected: { kinds, unitless } }: WrittenQuantity,
  at: Writer,
): Finding | undefined {
  if (number.problem === undefined) return undefined;
  const written = at.quote(number);
  // One question, not two: the unit is put in with the space.
  const isBare = !unit && !tolerance && !unitless && node.amounts.length === 1;
  const inches = isBare && isFractionOfInch(written, kinds) ? ' in' : '';
  const readings = number.readings.map(({ text }) => text + inches);
  const fixes = readings.map((text) => at.write(number, text, readings.length === 1));
  const place = at.place(number, fixes);
  if (number.problem === 'dashed-fraction')
    return finding(dashedFraction, place, { written, reading: readings[0] ?? written });
  return finding(commaInNumber, place, { written, readings });
}

/** Nobody measures in fractions of a millimetre. */
const isFractionOfInch = (number: string, kinds: readonly QuantityKind[] | undefined): boolean =>
  number.includes('/') && kinds?.length === 1 && kinds[0] === 'length';

function unitFault(
  unit: UnitNode | undefined,
  { expected, node, statement, word }: WrittenQuantity,
  at: Writer,
): Finding | undefined {
  if (unit === undefined || unit.unit !== undefined) return undefined;
  const { kinds } = expected;
  if (unit.readings.length === 0) {
    const thread = /^(?:[x×]\s*)?((?:M\d|G\d|#\d).*)$/.exec(unit.spelling)?.[1];
    const [amount] = node.amounts;
    // `remove 6 bolts`: no figure goes there, things do.
    const isNoFigure = statement !== undefined && kinds === undefined;
    // A clause that takes no figure says so itself.
    if (isNoFigure && word !== 'bare') return undefined;
    const named = isNoFigure && word === 'bare' && statement.items.length === 0 ? unit.spelling : undefined;
    const counted = thread ?? named;
    if (counted !== undefined && amount && node.amounts.length === 1) {
      const set = `${at.quote(amount.number)} of ${counted}`;
      const rest = { start: amount.number.end, end: unit.end };
      const fixes = [at.write(rest, ` of ${counted}`, true, node)];
      return finding(unknownUnit, at.place(unit, fixes), { spelling: unit.spelling, near: undefined, set });
    }
    const grade =
      /^w-?\d{2}$/i.test(unit.spelling) && amount
        ? at.quote({ start: amount.start, end: unit.end })
        : undefined;
    if (grade !== undefined && amount) {
      const meant = `SAE ${grade.toUpperCase().replace(/W(?=\d)/, 'W-')}`;
      const fixes = [at.write({ start: amount.start, end: unit.end }, meant, true)];
      return finding(unknownUnit, at.place(unit, fixes), {
        spelling: unit.spelling,
        near: undefined,
        grade: meant,
      });
    }
    const bound = HEADS_SAID.get(unit.spelling.toLowerCase());
    if (bound !== undefined && BOUNDS.has(bound) && amount && node.amounts.length === 1) {
      const meant = `${bound} ${at.quote(amount.number)}`;
      const fixes = word === 'bare' ? [at.write(node, meant, false, node)] : [];
      return finding(unknownUnit, at.place(unit, fixes), { spelling: unit.spelling, near: undefined, meant });
    }
    const near = isNoFigure ? undefined : nearestUnit(unit.spelling, kinds);
    const fits = near !== undefined && (kinds?.includes(near.kind) ?? true);
    // `at 4 places`: where things are counted, the word says what.
    if (kinds?.includes('count') && near === undefined) return undefined;
    const fixes =
      // Where anything may be measured, the nearest of all units is a guess.
      near && fits
        ? [at.write(unit, near.symbol, kinds !== undefined, node)]
        : kinds
          ? kindFixes(node, kinds, at)
          : [];
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
  const alike = unitsIn(node).filter(({ spelling }) => spelling === unit.spelling);
  const fixes = readings.map((reading) => at.writeAll(alike, definiteSpelling(reading.unit), node));
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
  const isInches = isFractionOfInch(at.quote(bare.number), kinds);
  const units =
    parts?.kind === 'time'
      ? [unitById(parts.id === 'min' ? 's' : 'min')]
      : isInches
        ? [unitById('in')]
        : usualUnits(kinds);
  const fixes = units.map((unit) => at.write({ start: end, end }, unitText(unit, value), isInches, node));
  const number = at.quote({ start: node.start, end });
  const [kind] = kinds;
  return finding(missingUnit, at.place(node, fixes), {
    number,
    wanted: kinds.length === 0 ? 'a value with its unit' : phrases(kinds),
    example: isInches ? `${number} in` : quantityKinds[kind ?? 'length'].example,
  });
}

/** `1.2 min` of a limit is the least thickness more often than a time, and a limit that is one time has no sides. */
function leastMeant(
  { node, thing, statement, word, expected }: WrittenQuantity,
  at: Writer,
): Finding | undefined {
  const [amount, ...rest] = node.amounts;
  if (thing?.kind !== 'limit' || statement || word !== 'bare' || rest.length > 0 || amount?.tolerance)
    return undefined;
  if (expected.unitless || node.form !== 'amount' || amount?.unit?.spelling !== 'min') return undefined;
  const { unit, number } = amount;
  const figure = at.quote(number);
  const fixes = [...usualUnits(['length']).map(({ symbol }) => `at least ${figure} ${symbol}`)]
    .concat(`at least ${figure} min`, `at most ${figure} min`)
    .map((text) => at.write(node, text));
  return finding(ambiguousUnit, at.place(unit, fixes), {
    spelling: unit.spelling,
    meanings: ['the least that is allowed, without its unit', 'minutes of time'],
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
  // Four clicks are no slip for four millimetres.
  const fixes = unit.kind === 'count' ? [] : kindFixes(node, kinds, at);
  return finding(wrongDimension, at.place(node, fixes), {
    written,
    found: quantityKinds[unit.kind].phrase,
    ...wanted(kinds),
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
