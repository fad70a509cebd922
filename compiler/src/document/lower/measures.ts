// Quantities as a guide prints them: the shop's unit first, the other system beside it, rounded once by NIST SP 811;
// torque units that are mistaken for each other spelled out.
import {
  convertRounded,
  digitsFor,
  formatMeasure,
  type Language,
  limitsOf,
  type Measure,
  otherSystem,
  rational,
  type Settings,
  type Unit,
  type UnitNode,
  unitById,
  unitText,
} from '@baywright/language';
import type { Figure, Inline, Quantity } from '../inline.js';

interface Wanted {
  readonly language: Language;
  readonly choice: { readonly units: Settings['units'] };
}

/** A measure in the order of units that the shop wants. */
export function quantityOf(measure: Measure, wanted: Wanted): Quantity {
  const { language } = wanted;
  const other = otherSystem(measure);
  if (!other) return { primary: figureOf(measure, language) };
  const turned = convertRounded(withoutPercent(measure), other);
  const order = turnsRound(measure.unit, other, wanted.choice.units)
    ? [turned, measure]
    : ([measure, turned] as const);
  return {
    primary: figureOf(order[0] ?? measure, language),
    secondary: figureOf(order[1] ?? turned, language),
  };
}

/** Whether the other system stands first. */
function turnsRound(written: Unit, other: Unit, units: Settings['units']): boolean {
  const isUs = (unit: Unit): boolean => unit.system === 'us' || unit.system === 'imperial';
  if (units === 'metric first') return isUs(written) && other.system === 'metric';
  return units === 'US first' && written.system === 'metric' && isUs(other);
}

/** The measure in the unit that stands first. */
export function firstMeasure(measure: Measure, wanted: Wanted): Measure {
  const other = otherSystem(measure);
  return other && turnsRound(measure.unit, other, wanted.choice.units)
    ? convertRounded(withoutPercent(measure), other)
    : measure;
}

/** Number and unit apart, so that one can be printed large. */
export function figureOf(measure: Measure, language: Language): Figure {
  const plain = withoutPercent(measure);
  const options = { language, style: 'print' } as const;
  const whole = formatMeasure(plain, options);
  if (plain.form === 'amount' && plain.parts) return { value: whole, unit: '' };
  const { high, low } = limitsOf(plain);
  const unit = unitText(
    plain.unit,
    plain.form === 'range' ? plain.high : (high ?? low ?? plain.value),
    options,
  );
  // Degrees stand against their number: they are one with it.
  if (plain.unit.symbol === '°' || plain.unit.symbol === '′') return { value: whole, unit: '' };
  const value = whole.endsWith(unit) ? whole.slice(0, whole.length - unit.length) : whole;
  const shown = plain.form === 'amount' ? value : value.trim();
  const spelled = plain.unit.spelledOut?.[language];
  if (spelled === undefined) return { value: shown, unit: whole.endsWith(unit) ? unit.trim() : '' };
  const loud = /\p{Lu}{3,}/u.exec(spelled)?.[0];
  return { value: shown, unit: spelled, ...(loud === undefined ? {} : { loud }) };
}

/**
 * The unit that a torque which is not known yet is written in at the bench: the one that is typed behind the `?`, or that
 * of bolts, in the system that stands first, and spelled out as with a figure.
 */
export function openUnit(typed: UnitNode | undefined, wanted: Wanted): string {
  if (typed !== undefined && typed.unit === undefined) return typed.spelling;
  const unit = typed?.unit ?? unitById('N-m');
  const value = rational(OF_A_BOLT);
  return figureOf(
    firstMeasure({ form: 'amount', value, unit, digits: digitsFor(value) }, wanted),
    wanted.language,
  ).unit;
}

/** N·m of a middling bolt: of two units of a system the one for such a torque is printed. */
const OF_A_BOLT = 100n;

/** A tolerance in per cent is printed as what it allows. */
function withoutPercent(measure: Measure): Measure {
  if (measure.form !== 'amount' || !measure.percent) return measure;
  const { percent: _, ...plain } = measure;
  return plain;
}

export function quantityInline(measure: Measure, wanted: Wanted): Inline {
  return { kind: 'quantity', quantity: quantityOf(measure, wanted) };
}

/** Minutes as a shop says them: `1 h 40 min`. */
export function minutesText(minutes: number): string {
  const whole = Math.max(0, Math.round(minutes));
  const parts = [
    Math.floor(whole / 60) > 0 ? `${Math.floor(whole / 60)}\u00a0h` : '',
    whole % 60 > 0 || whole === 0 ? `${whole % 60}\u00a0min` : '',
  ];
  return parts.filter((part) => part !== '').join('\u00a0');
}
