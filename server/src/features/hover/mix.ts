// What the mix of a coolant comes to: how cold it may get, what to pour together, how to set right what was found.
import {
  clausesOf,
  formatMeasure,
  type Measure,
  numberOf,
  type Thing,
  toSI,
  trade,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Texts } from '../../texts/index.js';

/** Empty for a fluid without a `mix`. */
export function mixLines({ say }: Snapshot, fluid: Thing): string {
  const mix = clausesOf(fluid, 'mix')[0]?.clause.spec?.stages[0]?.measure.measure;
  const { nominal, low } = mix ? toSI(mix) : {};
  const least = nominal ?? low;
  if (!mix || least === undefined) return '';
  const freezing = freezingLines(say, fluid, numberOf(least) * 100);
  // Of a mix that may lie in a range, no one amount can be told.
  const share = nominal === undefined ? undefined : numberOf(nominal);
  const pouring = share === undefined ? [] : fillsOf(fluid).map((fill) => pouringLine(say, fill, share));
  return [...freezing, ...pouring].join('  \n');
}

/** By the weakest mix that is allowed: for each glycol, unless the grade tells which. */
function freezingLines(say: Texts, fluid: Thing, percent: number): string[] {
  const grade = clausesOf(fluid, 'ASTM')[0]?.clause.raw;
  const read = grade && !grade.hole ? trade.readGrade('ASTM', grade.text) : undefined;
  if (read?.family !== 'coolant') return [];
  return trade.glycolsOf(read.printed).flatMap((glycol) => {
    const freezes = trade.coolantFreezePoint(glycol, percent);
    return freezes ? [`${say.freezesAt(Math.round(freezes.celsius), say[glycol])} · ${freezes.source}`] : [];
  });
}

function fillsOf(fluid: Thing): Measure[] {
  return clausesOf(fluid, 'fill').flatMap(({ clause }) => {
    const measure = clause.spec?.stages[0]?.measure.measure;
    return measure?.form === 'amount' ? [measure] : [];
  });
}

/** How far off the mix is taken to be found where a line tells how to mend it. */
const FOUND_WEAKER = 0.1;

function pouringLine(say: Texts, fill: Measure, share: number): string {
  const total = fill.form === 'amount' ? numberOf(fill.value) : 0;
  const shown = (amount: number): string => `${Number(amount.toPrecision(2))} ${fill.unit.symbol}`;
  const { concentrate, water } = trade.coolantMix(total, share);
  const parts = say.pouredOf(formatMeasure(fill), shown(concentrate), shown(water));
  const weaker = share - FOUND_WEAKER;
  const mend = trade.coolantTopUp(total, weaker, share);
  return mend && weaker > 0
    ? `${parts}; ${say.foundWeak(Math.round(weaker * 100), shown(mend.drain))}`
    : parts;
}
