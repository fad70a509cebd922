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
import type { Figure, Prose } from '../inline.js';
import { lineProse } from './line-words.js';
import { quantityInline, quantityOf } from './measures.js';
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

/** What is set for a torque of a line, N·m, in the unit that stands first; undefined where it is the torque itself. */
export function dialFigure(
  print: Print,
  dials: readonly DialSetting[],
  newtonMetres: number,
): Figure | undefined {
  const dial = dials.find(
    ({ torque }) => torque.lowNm <= newtonMetres * NEARLY && newtonMetres <= torque.highNm * NEARLY,
  );
  return dial && quantityOf(shown(dial.lowNm, dial.highNm, dial.torque.unit), print).primary;
}

/** Torques that went through other units and back are equal up to this factor. */
const NEARLY = 1 + 1e-9;

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
