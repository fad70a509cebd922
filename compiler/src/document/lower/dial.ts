// What is set on the wrench at a line where that is not the torque itself: drag of the fastener, a crowfoot.
import {
  type BoundStatement,
  type DialSetting,
  dialSettings,
  digitsFor,
  type Measure,
  numberOf,
  phrase,
  phraseText,
  rational,
  type Thing,
  type Unit,
} from '@baywright/language';
import type { TorqueStage } from '../beside.js';
import { type Prose, text } from '../inline.js';
import { lineProse } from './line-words.js';
import { quantityInline, quantityOf } from './measures.js';
import { capitalFirst, inSentence } from './names.js';
import { holdsHere, type Place, type Print } from './print.js';

/** The settings of a set at a line, on the vehicles that are printed there. */
export function dialsAt(print: Print, thing: Thing, statement: BoundStatement, place: Place): DialSetting[] {
  return dialSettings(print.job, statement).flatMap((setting) =>
    'torque' in setting && setting.thing === thing && holdsHere(print, setting.guard, place.when)
      ? [setting]
      : [],
  );
}

/** What is set for a torque of a line, N·m; undefined where it is the torque itself. */
export function settingOf(
  print: Print,
  dials: readonly DialSetting[],
  newtonMetres: number | undefined,
): Pick<TorqueStage, 'set'> {
  if (newtonMetres === undefined) return {};
  const dial = dials.find(
    ({ torque }) => torque.lowNm <= newtonMetres * NEARLY && newtonMetres <= torque.highNm * NEARLY,
  );
  if (!dial) return {};
  const figure = quantityOf(shown(dial.lowNm, dial.highNm, dial.torque.unit), print);
  const { language } = print;
  return { set: { label: phrase('dial-label', language), joint: phrase('joint', language), figure } };
}

/** Torques that went through other units and back are equal up to this factor. */
const NEARLY = 1 + 1e-9;

/** Why it is not the torque itself: `12 N·m of drag added`, `With the crowfoot in line`. */
export function dialReasons(print: Print, { torque, prevailingNm, adapter }: DialSetting): Prose[] {
  const { language } = print;
  const drag = (): Prose =>
    lineProse('dial-drag', language, {
      drag: [quantityInline(shown(prevailingNm, prevailingNm, torque.unit), print)],
    });
  const inLine =
    adapter && phraseText('dial-adapter', language, { adapter: inSentence(print, adapter.tool) });
  return [...(prevailingNm > 0 ? [drag()] : []), ...(inLine ? [[text(capitalFirst(inLine))]] : [])];
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
