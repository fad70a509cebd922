// What comes from the parts counter: parts fitted new, supplies, fluids, with numbers and amounts.
import {
  clausesOf,
  digitsFor,
  formatMeasure,
  isFormless,
  type Measure,
  numberOf,
  phrase,
  phraseText,
  type Rational,
  rational,
  type Thing,
  threadText,
  toSI,
  trade,
} from '@baywright/language';
import type { NeedRow } from '../blocks.js';
import { type Prose, text } from '../inline.js';
import { gradeText } from './grades.js';
import { measureProse, quantityInline } from './measures.js';
import { capitalFirst } from './names.js';
import { listTitles, rowsProse, strong } from './need-words.js';
import type { Print } from './print.js';
import { partNumber, titleOf } from './texts.js';
import type { UsedAmount } from './uses.js';
import { sideWord } from './variant-words.js';

/** Parts fitted new, with numbers by side and how many for the sides of this print. */
export function freshRows(print: Print, maybe: boolean): NeedRow[] {
  const { fresh } = print.uses;
  const always = new Set(fresh.filter((use) => !use.maybe).map(({ thing }) => thing));
  const things = [
    ...new Set(
      fresh
        .filter((use) => use.maybe === maybe && (!maybe || !always.has(use.thing)))
        .map(({ thing }) => thing),
    ),
  ];
  return things.flatMap((thing): NeedRow[] => {
    const uses = fresh.filter((use) => use.thing === thing && use.maybe === maybe);
    const bySide = new Map<string, typeof uses>();
    for (const use of uses) {
      const when = print.sides.find(({ word }) => word === use.side)?.when ?? print.when;
      const number = partNumber(print, thing, when) ?? '';
      bySide.set(number, [...(bySide.get(number) ?? []), use]);
    }
    return [...bySide].map(([number, own]) => {
      // A set that goes on twice on one side is the same new set.
      const perSide = new Map(own.map((use) => [use.side, use.count]));
      const count = [...perSide.values()].reduce((sum, one) => sum + one, 0);
      const sides =
        bySide.size > 1 ? [...perSide.keys()].map((side) => sideWord(print, side)).join(', ') : '';
      const isAsked = number === '?' || (number === '' && print.shelf.settings.release.partNumbers);
      const thread = threadText(thing);
      const detail =
        thread && !thread.hole && !isFormless(thing) ? ` ${thread.text.replace('x', '\u00a0×\u00a0')}` : '';
      return {
        what: [
          strong(capitalFirst(titleOf(print, thing))),
          text(`${detail}${sides === '' ? '' : `, ${sides}`}`),
        ],
        for: rowsProse(own),
        amount: [text(String(count))],
        ...(number !== '' && number !== '?' ? { number } : {}),
        ...(isAsked ? { blank: phrase('part-number', print.language) } : {}),
      };
    });
  });
}

/** Supplies and fluids with what they take: what the lines say, else what is declared for one job. */
export function amountRows(print: Print, uses: readonly UsedAmount[]): NeedRow[] {
  const things = [...new Set(uses.map(({ thing }) => thing))];
  return things.map((thing) => {
    const own = uses.filter((use) => use.thing === thing);
    const declared = clausesOf(thing, 'amount')[0] ?? clausesOf(thing, 'fill')[0];
    const node = declared?.clause.spec?.stages[0]?.measure;
    const said = summed(print, own);
    const amount = said.length > 0 ? said : node ? measureProse(node, print) : undefined;
    const number = partNumber(print, thing, print.when);
    const grade = gradeText(thing);
    return {
      what: [strong(capitalFirst(titleOf(print, thing))), ...(grade === '' ? [] : [text(`, ${grade}`)])],
      for: rowsProse(own),
      ...(number === undefined || number === '?' ? {} : { number }),
      ...(amount === undefined
        ? {}
        : { amount: [...amount, ...containers(print, thing, own, node?.measure)] }),
      ...(number === '?' ? { blank: phrase('part-number', print.language) } : {}),
    };
  });
}

/** How many containers to pull for the vehicle that takes most: ` = 2 × 5 L`. Empty where none is declared. */
function containers(
  print: Print,
  thing: Thing,
  uses: readonly UsedAmount[],
  declared: Measure | undefined,
): Prose {
  const container = clausesOf(thing, 'container')[0]?.clause.spec?.stages[0]?.measure.measure;
  const holds = container && toSI(container).nominal;
  const totals = totalsByVariant(uses).map(({ measure }) => measure);
  const asked = (totals.length > 0 ? totals : declared ? [declared] : []).filter(
    ({ unit }) => unit.kind === container?.unit.kind,
  );
  const most = Math.max(0, ...asked.map((measure) => largest(measure)));
  const pull = container && holds && most > 0 ? trade.containersToPull(most, numberOf(holds)) : undefined;
  return container && pull
    ? [text(` = ${pull.count} × ${formatMeasure(container, { language: print.language, style: 'print' })}`)]
    : [];
}

function largest(measure: Measure): number {
  const { nominal, high } = toSI(measure);
  const value = high ?? nominal;
  return value === undefined ? 0 : numberOf(value);
}

/** What the lines ask for in all; where vehicles differ, for each of them: what all need and what it needs alone. */
function summed(print: Print, uses: readonly UsedAmount[]): Prose {
  return totalsByVariant(uses).flatMap(
    ({ measure, variant }, i): Prose => [
      ...(i === 0 ? [] : [text(', ')]),
      quantityInline(measure, print),
      ...(variant === undefined ? [] : [text(` (${variant})`)]),
    ],
  );
}

function totalsByVariant(uses: readonly UsedAmount[]): { measure: Measure; variant: string | undefined }[] {
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

/** Threadlocker that torque lines ask for by its strength. */
export function lockerRows(print: Print): NeedRow[] {
  const found = new Map<string, Set<Thing>>();
  for (const { thing } of print.uses.torques) {
    const raw = clausesOf(thing, 'threadlocker')[0]?.clause.raw;
    if (!raw || raw.hole) continue;
    found.set(raw.text, (found.get(raw.text) ?? new Set()).add(thing));
  }
  return [...found].map(([strength, things]) => {
    const id =
      strength === 'low'
        ? 'threadlocker-low'
        : strength === 'high'
          ? 'threadlocker-high'
          : strength === 'medium'
            ? 'threadlocker-medium'
            : undefined;
    const supply = print.job.scope.resolve(strength);
    const named = id
      ? phraseText('threadlocker', print.language, { grade: phrase(id, print.language) })
      : supply
        ? titleOf(print, supply)
        : strength;
    return { what: [strong(capitalFirst(named))], for: [text(listTitles(print, [...things]))] };
  });
}
