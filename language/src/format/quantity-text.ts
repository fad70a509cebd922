// Writes quantities as the formatter wants them: `115 N·m`, `105 to 115 N·m`. What is not settled yet (`?`, a unit
// that is missing or could be several, a number that can be misread) stays as written: formatting answers no question.
// So does a unit that only its place settles (`lb` where a mass is wanted).
import { definiteSpelling, formatMeasure } from '../quantity/index.js';
import type { MeasureNode, NumberNode, SpecNode, UnitNode } from '../syntax/tree.js';
import type { Span } from '../text/span.js';

export function measureText(text: string, node: MeasureNode): string {
  const isOpen = node.amounts.some(
    ({ number, unit, tolerance }) =>
      number.problem !== undefined || isDoubtful(unit) || isDoubtful(tolerance?.unit),
  );
  // Two ends in degrees and minutes stay so: in minutes alone nobody at the wheel would know them again.
  const isFolded = node.amounts.some(({ number }) => /[\p{L}°′]/u.test(text.slice(number.start, number.end)));
  return node.measure === undefined || isOpen || isFolded
    ? asWritten(text, node)
    : formatMeasure(node.measure);
}

export function specText(text: string, { stages }: SpecNode): string {
  return stages.map(({ back, measure }) => (back ? 'back ' : '') + measureText(text, measure)).join(' then ');
}

/** A number without unit, as written but for its blanks. */
export function numberText(text: string, number: NumberNode): string {
  return asWritten(text, number);
}

/** Source text with every run of blanks made one space; quoted text stays. */
export function asWritten(text: string, { start, end }: Span): string {
  return text
    .slice(start, end)
    .split(/("[^"]*"?)/)
    .map((part) => (part.startsWith('"') ? part : part.replace(/\s+/g, ' ')))
    .join('');
}

/** A unit whose place settles it, or whose symbol alone would be doubtful again: `oz av`. */
function isDoubtful(unit: UnitNode | undefined): boolean {
  return (
    unit !== undefined &&
    (unit.readings.length > 0 ||
      (unit.unit !== undefined && definiteSpelling(unit.unit) !== unit.unit.symbol))
  );
}
