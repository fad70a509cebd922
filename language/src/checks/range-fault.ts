// What is wrong with the two ends of a range.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { rangeReversed, rangeTwoKinds, rangeTwoUnits } from '../diagnostics/quantities.js';
import { convertRounded, formatMeasure, quantityKinds, unitText } from '../quantity/index.js';
import type { MeasureNode } from '../syntax/tree.js';
import type { Writer } from './quantity-writer.js';

export function rangeFault(node: MeasureNode, at: Writer): Finding | undefined {
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
