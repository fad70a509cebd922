// What the running head and foot of each page of steps say: bans in force, what is off at its top and at its foot, and
// which step goes on.
import type { Rail } from '../../document/blocks.js';
import type { GuideDocument } from '../../document/document.js';
import { plain } from '../../document/inline.js';
import { say } from '../../document/words.js';
import { widthOf } from '../type/faces.js';
import type { Fragment } from './deal.js';
import { type Frame, WIDTH } from './frame.js';
import { NO_BANS, onNextPage, withGroups } from './shown-bans.js';

/** What is off and what waits for its torque, in words: `At the top`, `3 off`, `1 to torque`. */
export type Counts = readonly [label: string, off: string, loose: string];

export interface StepHead {
  /** Where the steps begin, and their room. */
  readonly under: number;
  readonly room: number;
  /** Bans in force, one bar each; their type in points. */
  readonly bars: readonly string[];
  readonly size: number;
  /** More bars than there is room for at full height. */
  readonly crowded: boolean;
  readonly top: Counts;
  readonly foot: Counts;
  /** The counts stand in two lines. */
  readonly narrow: boolean;
  /** The step that goes on from the page before, and that it does. */
  readonly step: readonly [number: string, said: string] | undefined;
}

/** Of each page, in order, and last of one after them. */
export function runningHeads(
  document: GuideDocument,
  pages: readonly (readonly Fragment[])[],
  frame: Frame,
): readonly StepHead[] {
  let bans = NO_BANS;
  let rail: Rail = { off: 0, loose: 0 };
  let going: Fragment | undefined;
  const heads: StepHead[] = [];
  for (const fragments of [...pages, []]) {
    const before = rail;
    bans = onNextPage(bans);
    const cont = going;
    for (const fragment of fragments) {
      if (fragment.begins && fragment.step.number !== '') rail = fragment.step.before;
      bans = withGroups(bans, fragment.groups);
      for (const { row } of fragment.groups.flat()) if (row) rail = row.rail;
      going = fragment.ends ? undefined : fragment;
    }
    const { shown } = bans;
    const texts = document.bans.filter(({ id }) => shown.has(id)).map(({ text }) => plain(text));
    heads.push({
      under: frame.stepTop(shown),
      room: frame.stepHeight(shown),
      ...bars([...new Set(texts)], before, document, frame),
      foot: counts(document.words.atFoot, rail, document),
      step: cont && [cont.step.number, say(document.words.continued, { step: cont.step.title })],
    });
  }
  return heads;
}

/** What a page says of the vehicle at its top or foot. */
export const counts = (label: string, { off, loose }: Rail, { words }: GuideDocument): Counts => [
  label,
  say(words.offCount, { count: off }),
  say(words.torqueCount, { count: loose }),
];

/** Sizes of type of the bars, the first that fits. */
const SIZES = [11, 10];
const SMALL_SIZES = [...SIZES, 9.2, 8.5];
/** The counts in two lines, and what stands beside them and a bar. */
export const NARROW = 33;
export const BESIDE_BAR = 12;

function bars(texts: readonly string[], before: Rail, document: GuideDocument, frame: Frame) {
  // A page may see one ban end and the next begin: then their bars share the height of those in force at once.
  const crowded = texts.length > frame.mostBans;
  const top = counts(document.words.atTop, before, document);
  const fits = (sizes: readonly number[], room: number) =>
    sizes.find((size) => texts.every((one) => widthOf(one, '700Bold', size) <= room));
  const size = fits(crowded ? [8.5] : SIZES, WIDTH - countsWide(top, 9) - BESIDE_BAR);
  // Long bars take the room of the counts, which then stand in two lines.
  const narrow = size === undefined;
  const small = fits(crowded ? [8.5] : SMALL_SIZES, WIDTH - NARROW - BESIDE_BAR) ?? 8.5;
  return { bars: texts, size: size ?? small, crowded, top, narrow };
}

export function countsWide([label, off, loose]: Counts, size: number): number {
  return widthOf(`${label}: , ${loose}`, '400Regular', size) + widthOf(off, '700Bold', size);
}
