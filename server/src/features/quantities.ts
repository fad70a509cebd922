// The quantities written on a line, and how each reads in the other unit system.
import {
  convertRounded,
  formatMeasure,
  hoursOf,
  type Line,
  type MeasureNode,
  numberOf,
  otherSystem,
  quantityKinds,
  type SpecNode,
  type Unit,
} from '@baywright/language';

/** Every quantity of a line that could be read, in the order written, those of some clauses left out. */
export function measuresOf(line: Line, without: ReadonlySet<string> = NONE): MeasureNode[] {
  const found: MeasureNode[] = [];
  const spec = (s: SpecNode | undefined): void => {
    for (const stage of s?.stages ?? []) found.push(stage.measure);
  };
  if (line.kind === 'clauses' || line.kind === 'statement' || line.kind === 'prerequisite')
    for (const clause of line.clauses) if (!without.has(clause.word)) spec(clause.spec);
  if (line.kind === 'labour' && line.time) found.push(line.time);
  if (line.kind === 'clip' && line.at) found.push(line.at);
  return found;
}

const NONE: ReadonlySet<string> = new Set();

/** Clauses of sizes of heads: there is no 0.71 in wrench to take for 18 mm. */
export const HEAD_SIZES: ReadonlySet<string> = new Set(['hex', 'square', 'twelve-point']);

/**
 * The same quantity as a reader of another habit would write it: `≈ 85 ft·lbf` for `115 N·m`, `= 1 h 30 min` for `90 min`.
 * Undefined where it has no other form; a bound is not said twice.
 */
export function otherForm(node: MeasureNode): string | undefined {
  const other = inOtherSystem(node);
  if (other !== undefined) return `≈ ${other.replace(/^at (?:least|most) /, '')}`;
  const hours = hoursOf(node);
  return hours === undefined ? undefined : `= ${hours}`;
}

/** `1 ft·lbf = 1.355818 N·m (NIST SP 811)`; undefined for the unit that all others of its kind are counted in. */
export function unitDefinition({ symbol, kind, factor, offset }: Unit): string | undefined {
  const { si } = quantityKinds[kind];
  if (symbol === si || offset !== undefined || kind === 'temperature') return undefined;
  return `1 ${symbol} = ${Number(numberOf(factor).toPrecision(7))} ${si} (NIST SP 811)`;
}

/** `85 ft·lbf` for `115 N·m`, rounded by NIST SP 811; undefined where the unit has no partner. */
export function inOtherSystem(node: MeasureNode): string | undefined {
  const { measure } = node;
  if (!measure) return undefined;
  const unit = otherSystem(measure);
  return unit ? formatMeasure(convertRounded(measure, unit)) : undefined;
}
