// What is set on the wrench at a line where that is not the torque itself: drag of the fastener, a crowfoot.
import {
  type BoundStatement,
  type DialSetting,
  dialSettings,
  digitsFor,
  type Measure,
  numberOf,
  rational,
  type Thing,
  type Unit,
} from '@baywright/language';
import type { Prose } from '../inline.js';
import { lineProse } from './line-words.js';
import { quantityInline } from './measures.js';
import { inSentence } from './names.js';
import { holdsHere, type Place, type Print } from './print.js';
import { stopped } from './sentences.js';

/** The settings of a set at a line, on the vehicles that are printed there. */
export function dialsAt(print: Print, thing: Thing, statement: BoundStatement, place: Place): DialSetting[] {
  return dialSettings(print.job, statement).flatMap((setting) =>
    'torque' in setting && setting.thing === thing && holdsHere(print, setting.guard, place.when)
      ? [setting]
      : [],
  );
}

/** `Set 102 N·m on the wrench, 12 N·m of drag added.` */
export function dialProse(
  print: Print,
  { torque, prevailingNm, adapter, lowNm, highNm }: DialSetting,
): Prose {
  const { unit } = torque;
  const drag =
    prevailingNm > 0 ? [quantityInline(shown(prevailingNm, prevailingNm, unit), print)] : undefined;
  return stopped(
    lineProse('dial-set', print.language, {
      amount: [quantityInline(shown(lowNm, highNm, unit), print)],
      drag,
      adapter: adapter && inSentence(print, adapter.tool),
    }),
  );
}

/** As fine as a wrench is set: three figures. */
function shown(lowNm: number, highNm: number, unit: Unit): Measure {
  const [low, high] = [lowNm, highNm].map((newtonMetres) =>
    rational(Number((newtonMetres / numberOf(unit.factor)).toPrecision(3)).toString()),
  );
  const value = high ?? rational(0n);
  if (lowNm === highNm || !low) return { form: 'amount', value, unit, digits: digitsFor(value) };
  return { form: 'range', low, high: value, unit, digits: digitsFor(low), highDigits: digitsFor(value) };
}
