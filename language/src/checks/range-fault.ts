// What is wrong with the two ends of a range.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { rangeReversed, rangeTwoKinds, rangeTwoUnits } from '../diagnostics/quantities.js';
import {
  convertRounded,
  type Digits,
  formatMeasure,
  quantityKinds,
  type Range,
  type Rational,
  type Unit,
  unitText,
} from '../quantity/index.js';
import type { MeasureNode } from '../syntax/tree.js';
import type { Writer } from './quantity-writer.js';

export function rangeFault(node: MeasureNode, at: Writer): Finding | undefined {
  const [low, high] = node.amounts;
  const first = low?.unit?.unit;
  const second = high?.unit?.unit;
  if (node.form !== 'range' || !low || !high || !first || !second || first === second) return undefined;
  if (first.kind !== second.kind) {
    const fixes = [second, first].flatMap((unit) => writeRange(node, low.number, high.number, unit, at));
    return finding(rangeTwoKinds, at.place(node, fixes), {
      first: quantityKinds[first.kind].phrase,
      second: quantityKinds[second.kind].phrase,
    });
  }
  const fixes = writeRange(node, inUnit(low.number, first, second), high.number, second, at);
  return finding(rangeTwoUnits, at.place(node, fixes), {
    what: 'range',
    first: first.symbol,
    second: second.symbol,
  });
}

/** An end of a range: its value, and how it was written. */
interface End {
  readonly value?: Rational | undefined;
  readonly digits?: Digits | undefined;
}

function inUnit({ value, digits }: End, from: Unit, to: Unit): End {
  if (!value || !digits) return {};
  const turned = convertRounded({ form: 'amount', value, unit: from, digits }, to);
  return turned.form === 'amount' ? turned : {};
}

/** The whole range in one unit, as the formatter writes it. */
function writeRange(node: MeasureNode, low: End, high: End, unit: Unit, at: Writer): Fix[] {
  if (!low.value || !low.digits || !high.value || !high.digits) return [];
  const range: Range = {
    form: 'range',
    low: low.value,
    high: high.value,
    unit,
    digits: low.digits,
    highDigits: high.digits,
  };
  return [at.write(node, formatMeasure(range))];
}

export function rangeBackwards(node: MeasureNode, at: Writer): Finding | undefined {
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
