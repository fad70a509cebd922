// What comes from the parts counter: parts fitted new with their numbers, threadlocker.
import { clausesOf, phrase, phraseText, type Thing } from '@baywright/language';
import type { NeedRow } from '../blocks.js';
import { text } from '../inline.js';
import { capitalFirst, countOf } from './names.js';
import { listTitles, rowsProse, strong, threadWords } from './need-words.js';
import type { Print } from './print.js';
import { partNumber, titleOf } from './texts.js';
import { LOCKERS } from './torques.js';
import { sideWord } from './variant-words.js';

/** A row of what is needed, with how many where it is counted in pieces. */
export interface StockRow extends NeedRow {
  readonly pieces?: number;
}

/** Parts fitted new, with numbers by side and how many for the sides of this print. */
export function freshRows(print: Print, maybe: boolean): StockRow[] {
  const { fresh } = print.uses;
  const always = new Set(
    fresh.filter((use) => !use.maybe && use.variant === undefined).map(({ thing }) => thing),
  );
  const things = [
    ...new Set(
      fresh
        .filter((use) => use.maybe === maybe && (!maybe || !always.has(use.thing)))
        .map(({ thing }) => thing),
    ),
  ];
  return things.flatMap((thing): StockRow[] => {
    const uses = fresh.filter((use) => use.thing === thing && use.maybe === maybe);
    const bySide = new Map<string, typeof uses>();
    for (const use of uses) {
      const when = print.sides.find(({ word }) => word === use.side)?.when ?? print.when;
      const number = partNumber(print, thing, when) ?? '';
      bySide.set(number, [...(bySide.get(number) ?? []), use]);
    }
    return [...bySide].map(([number, own]) => {
      // A set that goes on twice on one side is the same new set; one that goes on in parts is pulled whole.
      const perSide = new Map<string | undefined, number>();
      for (const use of own)
        perSide.set(use.side, Math.min(countOf(thing), (perSide.get(use.side) ?? 0) + use.count));
      const pieces = [...perSide.values()].reduce((sum, one) => sum + one, 0);
      const sides =
        bySide.size > 1 ? [...perSide.keys()].map((side) => sideWord(print, side)).join(', ') : '';
      const variants = new Set(own.map(({ variant }) => variant));
      const only = variants.has(undefined) ? '' : [...variants].join('; ');
      const isAsked = number === '?' || (number === '' && print.shelf.settings.release.partNumbers);
      const thread = threadWords(print, thing);
      const detail = thread === undefined ? '' : ` ${thread}`;
      return {
        what: [
          strong(capitalFirst(titleOf(print, thing))),
          text(
            [detail, sides, only].map((words, i) => (i > 0 && words !== '' ? `, ${words}` : words)).join(''),
          ),
        ],
        for: rowsProse(own),
        pieces,
        ...(number !== '' && number !== '?' ? { number } : {}),
        ...(isAsked ? { blank: phrase('part-number', print.language) } : {}),
      };
    });
  });
}

/** Whether it is a supply of the shop that a line puts on: that line has it pulled, with its number and amount. */
const isPulled = (print: Print, name: string): boolean => {
  const supply = print.job.scope.resolve(name);
  return print.uses.supplies.some(({ thing }) => thing === supply);
};

/** Threadlocker that torque lines ask for by its strength. */
export function lockerRows(print: Print): NeedRow[] {
  const found = new Map<string, Set<Thing>>();
  for (const { thing } of print.uses.torques) {
    const raw = clausesOf(thing, 'threadlocker')[0]?.clause.raw;
    if (!raw || raw.hole || isPulled(print, raw.text)) continue;
    found.set(raw.text, (found.get(raw.text) ?? new Set()).add(thing));
  }
  return [...found].map(([strength, things]) => {
    const id = LOCKERS[strength];
    const supply = print.job.scope.resolve(strength);
    const bySupply = supply ? titleOf(print, supply) : strength;
    const named = id
      ? phraseText('threadlocker', print.language, { grade: phrase(id, print.language) })
      : bySupply;
    return { what: [strong(capitalFirst(named))], for: [text(listTitles(print, [...things]))] };
  });
}
