// Clocks that a sealant starts: the joint must be closed in time, and cure before it is torqued, filled or run. Each is
// a box to write in at the row that starts it, and a running bar until the row that ends it.
import {
  type BoundStatement,
  minutesOf,
  type Need,
  type PhraseId,
  phrase,
  sealantOf,
  type Thing,
  type VerbDef,
} from '@baywright/language';
import type { Beside } from '../beside.js';
import type { Prose } from '../inline.js';
import { lineProse } from './line-words.js';
import { minutesText } from './measures.js';
import type { Print } from './print.js';
import type { RowAt } from './uses.js';
import type { Walk } from './walk.js';

type ClockWord = 'fit within' | 'torque after' | 'fill after' | 'run after';

interface ClockDef {
  /** The clause of the supply. */
  readonly word: ClockWord;
  readonly sense: 'at least' | 'at most';
  /** What the time is for, in a word: `fill`. */
  readonly name: PhraseId;
  /** The whole sentence: the time, the row it runs from, the row that may follow. */
  readonly told: PhraseId;
  /** Whether a line on this thing ends it. */
  ends(walk: Walk, statement: BoundStatement, thing: Thing, part: Thing): boolean;
}

/** Whether the verb asks of the thing that a clock has run down: a battery is charged while sealant cures. */
const waits = ({ on }: VerbDef, thing: Thing, need: Need): boolean =>
  on[thing.kind]?.needs.includes(need) ?? false;

const CLOCKS: readonly ClockDef[] = [
  {
    word: 'fit within',
    sense: 'at most',
    name: 'close-joint',
    told: 'fit-within',
    ends: (_walk, { verb }, thing, part) =>
      thing === part && (verb.on.part?.makes.includes('fitted') ?? false),
  },
  {
    word: 'torque after',
    sense: 'at least',
    name: 'clock-torque',
    told: 'torque-after',
    ends: ({ print }, { verb }, thing, part) =>
      waits(verb, thing, 'torque clock') &&
      print.job.relations(part, 'held by').some(({ target }) => target === thing),
  },
  {
    word: 'fill after',
    sense: 'at least',
    name: 'clock-fill',
    told: 'fill-after',
    ends: (_walk, { verb }, thing) => waits(verb, thing, 'fill clock'),
  },
  {
    word: 'run after',
    sense: 'at least',
    name: 'clock-run',
    told: 'run-after',
    ends: (_walk, { verb }, thing) => waits(verb, thing, 'run clock'),
  },
];

/** A clock that was started, for the running bar. */
export interface Running {
  readonly def: ClockDef;
  readonly part: Thing;
  /** The box at the row that starts it. */
  readonly box: string;
  /** `4 h`. */
  readonly time: string;
  readonly from: RowAt;
  /** The row that ends it: that closes the joint in time, or that has waited for the sealant. */
  to: RowAt | undefined;
  /** The row that ends it is for some vehicles only: a later one may end it for others. */
  isPartial: boolean;
}

/** The clock in words; without `to`, what holds as long as it runs. */
export const clockProse = (print: Print, { def, time, from }: Running, to?: RowAt): Prose =>
  lineProse(def.told, print.language, { time, from, line: to });

/** Ends the clocks that a row ends and starts those it starts; gives the boxes of the latter. */
export function clocksAt(
  walk: Walk,
  statement: BoundStatement,
  things: readonly Thing[],
  at: RowAt,
  isPartial: boolean,
): Beside[] {
  for (const thing of things) {
    for (const clock of walk.clocks) {
      if (isOver(clock, at) || !clock.def.ends(walk, statement, thing, clock.part)) continue;
      clock.to = at;
      clock.isPartial = isPartial;
    }
  }
  return things.flatMap((thing) => started(walk, statement, thing, at));
}

/**
 * A joint that is closed for some vehicles only may still be closed for the others by a line of the same step. A ban is
 * over with the first line that it waits for: that one is already too early for it.
 */
function isOver({ def, to, isPartial }: Running, at: RowAt): boolean {
  if (to === undefined) return false;
  return def.sense === 'at least' || !(isPartial && to.number.split('.')[0] === at.number.split('.')[0]);
}

function started(walk: Walk, { verb }: BoundStatement, thing: Thing, at: RowAt): Beside[] {
  const { print } = walk;
  if (verb.on.supply?.makes.includes('coated')) {
    const parts = print.job.inverse(thing, 'sealed with').map(({ of }) => of);
    return parts.slice(0, 1).flatMap((part) => start(walk, ['fit within'], thing, part, at));
  }
  const sealant =
    verb.on.part?.makes.includes('fitted') && thing.kind === 'part' ? sealantOf(print.job, thing) : undefined;
  return sealant ? start(walk, ['torque after', 'fill after', 'run after'], sealant, thing, at) : [];
}

function start(walk: Walk, words: readonly ClockWord[], sealant: Thing, part: Thing, at: RowAt): Beside[] {
  const { language } = walk.print;
  return CLOCKS.filter(({ word }) => words.includes(word)).flatMap((def): Beside[] => {
    const minutes = minutesOf(sealant, def.word);
    if (minutes === undefined) return [];
    const time = minutesText(minutes);
    const box = `${def.word.replace(' ', '-')}-${at.row}`;
    walk.clocks.push({
      def,
      box,
      part,
      time,
      from: at,
      to: undefined,
      isPartial: false,
    });
    return [
      {
        kind: 'clock',
        id: box,
        sense: def.sense,
        seconds: Math.round(minutes * 60),
        length: { value: time, unit: '' },
        name: phrase(def.name, language),
        from: at,
      },
    ];
  });
}
