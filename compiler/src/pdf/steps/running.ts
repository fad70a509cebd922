// What the running head and foot of each page of steps say: bans in force, what is off at its top and at its foot, and
// which step goes on.
import type { Rail } from '../../document/blocks.js';
import type { GuideDocument } from '../../document/document.js';
import { plain } from '../../document/inline.js';
import { say } from '../../document/words.js';
import { widthOf } from '../type/faces.js';
import type { Argument } from '../typst-code.js';
import type { Fragment } from './deal.js';
import { type Frame, WIDTH } from './frame.js';
import type { Between } from './units.js';

/** Of each page, in order, and last of one after them. */
export function runningHeads(
  document: GuideDocument,
  pages: readonly (readonly Fragment[])[],
  frame: Frame,
): readonly Argument[] {
  const live = new Set<string>();
  let rail: Rail = { off: 0, loose: 0 };
  let going: Fragment | undefined;
  const heads: Argument[] = [];
  for (const fragments of [...pages, []]) {
    const before = rail;
    const shown = new Set(live);
    const cont = going;
    for (const fragment of fragments) {
      if (fragment.begins && fragment.step.number !== '') rail = fragment.step.before;
      for (const { before: first, row, after } of fragment.units) {
        for (const one of [...first, ...after]) note(one, live, shown);
        if (row) rail = row.rail;
      }
      going = fragment.ends ? undefined : fragment;
    }
    const texts = document.bans.filter(({ id }) => shown.has(id)).map(({ text }) => plain(text));
    heads.push({
      ...bars([...new Set(texts)], before, document, frame),
      foot: counts(document.words.atFoot, rail, document),
      step: cont && [cont.step.number, say(document.words.continued, { step: cont.step.title })],
    });
  }
  return heads;
}

/** A ban is on the page on which it begins, and still on that on which it ends. */
function note({ ban }: Between, live: Set<string>, shown: Set<string>): void {
  if (!ban) return;
  shown.add(ban.id);
  if (ban.edge === 'start') live.add(ban.id);
  else live.delete(ban.id);
}

const counts = (label: string, { off, loose }: Rail, { words }: GuideDocument): Argument => [
  label,
  say(words.offCount, { count: off }),
  say(words.torqueCount, { count: loose }),
];

/** Sizes of type of the bars, the first that fits. */
const SIZES = [11, 10];
const SMALL_SIZES = [...SIZES, 9.2, 8.5];
/** The counts in two lines. */
const NARROW = 33;

function bars(texts: readonly string[], before: Rail, document: GuideDocument, frame: Frame) {
  const { words } = document;
  // A page may see one ban end and the next begin: then their bars share the height of those in force at once.
  const crowded = texts.length > frame.mostBans;
  const state = counts(words.atTop, before, document);
  const fits = (sizes: readonly number[], room: number) =>
    sizes.find((size) => texts.every((one) => widthOf(one, '700Bold', size) <= room));
  const wide = countsWide(state as readonly string[]);
  const size = fits(crowded ? [8.5] : SIZES, WIDTH - wide - 12.4);
  // Long bars take the room of the counts, which then stand in two lines.
  const narrow = size === undefined;
  return {
    bars: texts,
    size: size ?? fits(crowded ? [8.5] : SMALL_SIZES, WIDTH - NARROW - 12.4) ?? 8.5,
    crowded,
    state,
    narrow: narrow ? NARROW : undefined,
  };
}

function countsWide([label = '', off = '', loose = '']: readonly string[]): number {
  return (
    widthOf(`${label}: , `, '400Regular', 9) +
    widthOf(off, '700Bold', 9, true) +
    widthOf(loose, '400Regular', 9, true)
  );
}
