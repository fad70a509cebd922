// What is wrong with a tolerance: its unit, the order of its sides, its width.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { toleranceReversed, toleranceTooWide, toleranceUnit } from '../diagnostics/quantities.js';
import type { WrittenQuantity } from '../names/quantities.js';
import {
  type Amount,
  convertRounded,
  formatMeasure,
  formatNumber,
  type Rational,
  rational,
  type Unit,
  unitText,
} from '../quantity/index.js';
import type { AmountNode, MeasureNode } from '../syntax/tree.js';
import type { Writer } from './quantity-writer.js';

export function toleranceFault({ node, thing }: WrittenQuantity, at: Writer): Finding | undefined {
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
  const { value, digits } = amount?.number ?? {};
  if (!amount || !to || !from || !tolerance || !value || !digits) return [];
  if (to.offset !== undefined || from.offset !== undefined || to.kind !== from.kind) return [];
  const turned = (side: Rational) =>
    convertRounded({ form: 'amount', value: side, unit: from, digits: tolerance.digits ?? PLAIN }, to);
  const [plus, minus] = [turned(tolerance.plus), turned(tolerance.minus)];
  if (plus.form !== 'amount' || minus.form !== 'amount') return [];
  const whole: Amount = {
    form: 'amount',
    value,
    unit: to,
    digits,
    plus: plus.value,
    minus: minus.value,
    toleranceDigits: plus.digits,
  };
  return [at.write(amount, formatMeasure(whole), true)];
}

const PLAIN = { significant: 1, decimals: 0 };

function valueText(value: AmountNode['number']['value'], unit: Unit | undefined): string {
  return value === undefined
    ? 'its value'
    : `${formatNumber(value, PLAIN)}${unit ? unitText(unit, value) : ''}`;
}
