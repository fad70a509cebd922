// How much of a supply or fluid a print takes: what its lines say, else what is declared for one job on one side.
import {
  clausesOf,
  digitsFor,
  formatMeasure,
  type Measure,
  numberOf,
  phrase,
  type Rational,
  rational,
  type Thing,
  toSI,
  trade,
} from '@baywright/language';
import type { NeedRow } from '../blocks.js';
import { type Prose, text } from '../inline.js';
import { gradeText } from './grades.js';
import { quantityInline } from './measures.js';
import { capitalFirst } from './names.js';
import { rowsProse, strong } from './need-words.js';
import { amountLines } from './poured.js';
import type { Print } from './print.js';
import { partNumber, titleOf } from './texts.js';
import { holding } from './torques.js';
import type { UsedAmount } from './uses.js';

/** Supplies and fluids, each with its amount and the containers to pull. */
export function amountRows(print: Print, uses: readonly UsedAmount[]): NeedRow[] {
  const things = [...new Set(uses.map(({ thing }) => thing))];
  return things.map((thing) => {
    const own = uses.filter((use) => use.thing === thing);
    const amounts = amountsOf(print, thing, own);
    const number = partNumber(print, thing, print.when);
    const variants = new Set(own.map(({ variant }) => variant));
    const isTold = variants.has(undefined) || amounts.some(({ variant }) => variant !== undefined);
    const more = [gradeText(thing), isTold ? '' : [...variants].join('; ')].filter((words) => words !== '');
    return {
      what: [strong(capitalFirst(titleOf(print, thing))), ...more.map((words) => text(`, ${words}`))],
      for: rowsProse(own),
      ...(number === undefined || number === '?' ? {} : { number }),
      ...(amounts.length === 0
        ? {}
        : { amount: [...amountProse(print, amounts), ...containers(print, thing, amounts)] }),
      ...(number === '?' ? { blank: phrase('part-number', print.language) } : {}),
    };
  });
}

interface Amount {
  readonly measure: Measure;
  /** The vehicles that take it, in words; undefined for all. */
  readonly variant: string | undefined;
}

/** What the lines say counts where each of them says it, or where nothing is declared. */
export function amountsOf(print: Print, thing: Thing, uses: readonly UsedAmount[]): Amount[] {
  const declared = declaredFor(print, thing, uses);
  const isSaid = uses.every(({ amount, isTopUp }) => amount !== undefined || isTopUp === true);
  const said = saidBy(uses);
  return declared.length === 0 || (isSaid && !isFirstPart(said, declared, uses)) ? said : declared;
}

/** Whether the lines fill a part of what goes in, and top the rest up. */
function isFirstPart(
  said: readonly Amount[],
  declared: readonly Amount[],
  uses: readonly UsedAmount[],
): boolean {
  const most = (amounts: readonly Amount[]): number =>
    Math.max(0, ...amounts.map(({ measure }) => largest(measure)));
  const isOpen = uses.some(({ amount, isTopUp }) => isTopUp === true && amount === undefined);
  const isOneKind = new Set([...said, ...declared].map(({ measure }) => measure.unit.kind)).size === 1;
  return isOpen && isOneKind && most(said) < most(declared);
}

/** What is declared, once for each side it is used on; nothing where it is only topped up. */
function declaredFor(print: Print, thing: Thing, uses: readonly UsedAmount[]): Amount[] {
  const filling = uses.filter(({ isTopUp }) => isTopUp !== true);
  if (filling.length === 0) return [];
  const sides = new Set(filling.flatMap(({ side }) => side ?? [])).size;
  const own = clausesOf(thing, 'amount');
  const lines = own.length > 0 ? own : amountLines(thing);
  return holding(print, print.when, lines).flatMap(({ line, variant }) => {
    const measure = line.clause.spec?.stages[0]?.measure.measure;
    return measure ? [{ measure: timesWhole(measure, Math.max(1, sides)), variant }] : [];
  });
}

function timesWhole(measure: Measure, times: number): Measure {
  if (times === 1 || measure.form !== 'amount') return measure;
  const value = measure.value.mul(rational(BigInt(times)));
  return { form: 'amount', value, unit: measure.unit, digits: digitsFor(value) };
}

/** What the lines ask for in all; where vehicles differ, for each of them: what all need and what it needs alone. */
function saidBy(uses: readonly UsedAmount[]): Amount[] {
  const variants = [...new Set(uses.flatMap(({ variant }) => (variant === undefined ? [] : [variant])))];
  const of = (variant: string | undefined): Measure | undefined =>
    total(
      uses.flatMap((use) =>
        use.amount && (use.variant === undefined || use.variant === variant) ? [use.amount] : [],
      ),
    );
  const all = variants.length === 0 ? [undefined] : variants;
  return all.flatMap((variant) => {
    const measure = of(variant);
    return measure ? [{ measure, variant }] : [];
  });
}

/** The total of plain amounts of one unit; undefined where they cannot be added. */
function total(amounts: readonly Measure[]): Measure | undefined {
  const plain = amounts.filter((amount) => amount.form === 'amount');
  const [first] = plain;
  if (!first || plain.length < amounts.length || plain.some(({ unit }) => unit !== first.unit))
    return undefined;
  if (plain.length === 1) return first;
  const value = plain.reduce<Rational>((sum, amount) => sum.add(amount.value), rational(0n));
  return { form: 'amount', value, unit: first.unit, digits: digitsFor(value) };
}

export const amountProse = (print: Print, amounts: readonly Amount[]): Prose =>
  amounts.flatMap(
    ({ measure, variant }, i): Prose => [
      ...(i === 0 ? [] : [text(', ')]),
      quantityInline(measure, print),
      ...(variant === undefined ? [] : [text(` (${variant})`)]),
    ],
  );

/** How many containers to pull for the vehicle that takes most: ` = 2 × 5 L`. Empty where none is declared. */
function containers(print: Print, thing: Thing, amounts: readonly Amount[]): Prose {
  const container = clausesOf(thing, 'container')[0]?.clause.spec?.stages[0]?.measure.measure;
  const holds = container && toSI(container).nominal;
  const asked = amounts.filter(({ measure }) => measure.unit.kind === container?.unit.kind);
  const most = Math.max(0, ...asked.map(({ measure }) => largest(measure)));
  const pull = container && holds && most > 0 ? trade.containersToPull(most, numberOf(holds)) : undefined;
  return container && pull
    ? [
        text(
          ` =\u00a0${pull.count}\u00a0×\u00a0${formatMeasure(container, { language: print.language, style: 'print' })}`,
        ),
      ]
    : [];
}

function largest(measure: Measure): number {
  const { nominal, high } = toSI(measure);
  const value = high ?? nominal;
  return value === undefined ? 0 : numberOf(value);
}
