// The box of a reading: its limits with where each holds, in the unit they are written in and in the other system.
import {
  type Clause,
  type Condition,
  clausesOf,
  convertRounded,
  type Digits,
  formatNumber,
  type Guard,
  limitsOf,
  type Measure,
  otherSystem,
  phraseText,
  type Rational,
  type Thing,
  type Unit,
  unitText,
} from '@baywright/language';
import type { ReadingUnit } from '../beside.js';
import type { Prose } from '../inline.js';
import { plainFigure, text } from '../inline.js';
import { figureOf } from './measures.js';
import type { Print } from './print.js';
import { holding } from './torques.js';

/** A limit as it holds on some combinations. */
export interface LimitHere {
  readonly variant: string | undefined;
  readonly units: readonly ReadingUnit[];
  readonly low?: string;
  readonly high?: string;
  /** The ends as they are printed: `22,0 mm` in German. */
  readonly ends: { readonly low?: string; readonly high?: string };
  /** `at least 22.0 mm`. */
  readonly limit: Prose;
  readonly fresh?: Prose;
  readonly other?: Prose;
  readonly per: string | undefined;
}

/** The limits of a thing at a place, one for each combination that has its own; empty when none is declared. */
export function limitsAt(print: Print, thing: Thing, within: Condition): LimitHere[] {
  const lines = ['bare', 'at least', 'at most'].flatMap((word) =>
    clausesOf(thing, word).map((at) => ({ ...at, word, guard: at.guard as Guard | undefined })),
  );
  const whole = [...new Set(lines.map((line) => line.line))];
  const grouped = whole.map((line) => {
    const own = lines.filter((one) => one.line === line);
    return { guard: own[0]?.guard, clauses: line.clauses, own: own.map((one) => one.clause) };
  });
  return holding(print, within, grouped).map(({ line, variant }) =>
    limitOf(print, line.own, line.clauses, variant),
  );
}

function limitOf(
  print: Print,
  own: readonly Clause[],
  all: readonly Clause[],
  variant: string | undefined,
): LimitHere {
  const per = all.find((clause) => clause.word === 'per')?.raw?.text;
  const bounds = own.map((clause) => ({ clause, measure: clause.spec?.stages[0]?.measure.measure }));
  const first = bounds[0]?.measure;
  if (!first) return { variant, units: [], ends: {}, limit: [text('?')], per };
  const { unit } = first;
  let [low, high]: [string | undefined, string | undefined] = [undefined, undefined];
  const ends: { low?: string; high?: string } = {};
  const printed = { language: print.language, style: 'print' } as const;
  const end = (value: Rational, { digits }: Measure): string =>
    formatNumber(value, digits, printed) + unitText(unit, value, printed);
  for (const { clause, measure } of bounds) {
    if (!measure) continue;
    const limits = limitsOf(measure);
    if (clause.word !== 'at most' && limits.low) {
      low = exact(limits.low, measure.digits);
      ends.low = end(limits.low, measure);
    }
    if (clause.word !== 'at least' && limits.high) {
      high = exact(limits.high, measure.digits);
      ends.high = end(limits.high, measure);
    }
  }
  const fresh = all.find((clause) => clause.word === 'new')?.spec?.stages[0]?.measure.measure;
  const said = (turn: (measure: Measure) => Measure): string =>
    bounds
      .flatMap(({ clause, measure }) => (measure ? [boundText(print, clause.word, turn(measure))] : []))
      .join(', ');
  const other = otherSystem(first);
  const turned = (measure: Measure): Measure =>
    other && measure.unit.kind === other.kind ? convertRounded(measure, other) : measure;
  const newText = (measure: Measure): string =>
    phraseText('new-value', print.language, { value: plainFigure(figureOf(measure, print.language)) });
  return {
    variant,
    per,
    units: [
      { label: symbolIn(print, unit), times: ['1', '1'] },
      ...(other ? [readingUnit(print, other, unit)] : []),
    ],
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    ends,
    limit: [text(`${said((measure) => measure)}${variant === undefined ? '' : ` (${variant})`}`)],
    ...(fresh ? { fresh: [text(newText(fresh))] } : {}),
    ...(other
      ? { other: [text([said(turned), ...(fresh ? [newText(turned(fresh))] : [])].join(', '))] }
      : {}),
  };
}

function boundText(print: Print, word: string, measure: Measure): string {
  const value = plainFigure(figureOf(measure, print.language));
  const isPlain = measure.form === 'amount';
  if (word === 'at least' && isPlain) return phraseText('at-least', print.language, { value });
  if (word === 'at most' && isPlain) return phraseText('at-most', print.language, { value });
  return value;
}

/** `U/min` in German: what the limit beside it says. */
const symbolIn = ({ language }: Print, unit: Unit): string =>
  unit.isWord === true ? unit.symbol : unitText(unit, unit.factor, { language, style: 'print' }).trim();

/** What one of a unit is in another of its kind, as an exact fraction. */
function readingUnit(print: Print, unit: Unit, into: Unit): ReadingUnit {
  const label = symbolIn(print, unit);
  const times = unit.factor.div(into.factor);
  const fraction = (value: Rational): readonly [string, string] => [
    `${value.s < 0n ? '-' : ''}${value.n}`,
    `${value.d}`,
  ];
  if (unit.offset === undefined && into.offset === undefined) return { label, times: fraction(times) };
  const [zero, intoZero] = [unit.offset, into.offset];
  const plus = (zero ? zero.mul(times) : times.sub(times)).sub(intoZero ?? times.sub(times));
  return { label, times: fraction(times), plus: fraction(plus) };
}

/** Exact decimal text with at least the digits that were written: `22.0`. */
const exact = (value: Rational, digits: Digits): string =>
  formatNumber(value, digits, { language: 'en', style: 'source' }).replaceAll(' ', '');
