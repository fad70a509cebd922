// Which parts of a step stand on a page together. All heights are known before anything is set, so every way to break the
// job is weighed at once: as few pages as can be, and among those the breaks that part least and leave no page half empty.
import type { Rail } from '../../document/blocks.js';
import { HAIR } from './frame.js';
import type { Stays } from './rows.js';
import { high, lifted, type Part } from './set.js';
import { NO_BANS, onNextPage, type ShownBans, withGroups } from './shown-bans.js';
import { groupHigh, groupStays, type Unit } from './units.js';

/** A page more costs more than any break. */
const PAGE = 1000;
/** Of a page that stays empty in its lower half, a quarter of this: some 60 mm are worth as much as a parted step. */
const EMPTY = 300;
/** A step is parted. */
const PARTED = 20;
/** On the next page, away from the line that it judges or depends on: of a STOP or a HOLD a page more is better. */
const APART = { always: 1500, 'where it can': 60, no: 0 } as const;
/** What explains and proves the guide on a page without a line of it. */
const ENDING_ALONE = 90;
/** Less of a step on a page than {@link LEAST_TAIL} or {@link LEAST_HEAD}: a page more is better. */
const TOO_LITTLE = 2500;
/** What is carried over is at least so high: a page does not begin with the one last line of a step. */
const LEAST_TAIL = 26;
/** A head with its first line is not left at the foot of a page when it is lower than this: a second line goes with it. */
const LEAST_HEAD = 45;

export interface Step {
  readonly number: string;
  readonly title: string;
  readonly before: Rail;
  readonly revised: boolean;
  readonly head: Part;
  /** What never parts. */
  readonly groups: readonly (readonly Unit[])[];
}

/** A run of a step's groups on one page. */
export interface Fragment {
  readonly step: Step;
  readonly groups: Step['groups'];
  readonly begins: boolean;
  readonly ends: boolean;
}

export interface Dealt {
  readonly pages: readonly (readonly Fragment[])[];
  /** What stands behind the steps is on a page of its own after these. */
  readonly endsAlone: boolean;
}

/** A group of a step, and where the step begins and ends among all groups. */
interface Piece {
  readonly step: Step;
  readonly group: readonly Unit[];
  readonly from: number;
  readonly to: number;
  readonly stays: Stays;
  readonly hasBans: boolean;
}

/**
 * `room` is the free height of a page that shows these bans: its head grows with what stands on it, never the other way.
 * `ending` is the height of what stands behind the steps.
 */
export function deal(steps: readonly Step[], room: (bans: ReadonlySet<string>) => number, ending = 0): Dealt {
  const pieces = piecesOf(steps);
  // Where each piece begins if all stood on one endless page.
  const tops = [0];
  const bans: ShownBans[] = [NO_BANS];
  for (const [i, { step, group, from, hasBans }] of pieces.entries()) {
    tops.push((tops[i] ?? 0) + groupHigh(group) + (i === from ? step.head.height : 0));
    const before = onNextPage(bans[i] ?? NO_BANS);
    bans.push(hasBans ? withGroups(before, [group]) : before);
  }
  const top = (i: number): number => tops[i] ?? 0;
  const count = pieces.length + (ending > 0 ? 1 : 0);
  const ways: Way[] = [{ cost: 0, from: 0 }];
  for (let from = 0; from < count; from++) {
    const before = ways[from];
    if (!before) continue;
    let shown = onNextPage(bans[from] ?? NO_BANS);
    let full = room(shown.shown) - HAIR;
    for (let to = from + 1; to <= count; to++) {
      const piece = pieces[to - 1];
      if (piece?.hasBans) {
        shown = withGroups(shown, [piece.group]);
        full = room(shown.shown) - HAIR;
      }
      const high = top(Math.min(to, pieces.length)) - top(from) + (piece ? 0 : ending);
      if (high > full && to > from + 1) break;
      const page = to === count ? 0 : EMPTY * Math.max(0, 1 - high / full) ** 2;
      const cost = before.cost + PAGE + page + breakCost(pieces, top, from, to);
      if (cost < (ways[to]?.cost ?? Number.POSITIVE_INFINITY)) ways[to] = { cost, from };
    }
  }
  return dealtBy(ways, pieces);
}

/** The best way to what stands before a piece: its cost, and where its last page begins. */
interface Way {
  readonly cost: number;
  readonly from: number;
}

function piecesOf(steps: readonly Step[]): readonly Piece[] {
  const pieces: Piece[] = [];
  for (const step of steps) {
    const groups = step.groups.length === 0 ? [[]] : step.groups;
    const [from, to] = [pieces.length, pieces.length + groups.length];
    for (const group of groups) {
      const hasBans = group.some((unit) => [...unit.before, ...unit.after].some(({ ban }) => ban));
      pieces.push({ step, group, from, to, stays: groupStays(group), hasBans });
    }
  }
  return pieces;
}

/** What it costs that a page which begins with one piece ends before another. */
function breakCost(pieces: readonly Piece[], top: (i: number) => number, from: number, to: number): number {
  const next = pieces[to];
  if (!next) {
    const first = pieces[from];
    if (!first) return ENDING_ALONE;
    // The last lines of the job on a page of their own: the step had better go there whole.
    return first.from < from && first.to === pieces.length ? PARTED : 0;
  }
  if (next.from === to) return 0;
  const isHead = next.from === to - 1 && next.from > from && top(to) - top(next.from) < LEAST_HEAD;
  const isTail = top(next.to) - top(to) < LEAST_TAIL;
  return PARTED + APART[next.stays] + (isHead || isTail ? TOO_LITTLE : 0);
}

function dealtBy(ways: readonly Way[], pieces: readonly Piece[]): Dealt {
  const pages: (readonly Fragment[])[] = [];
  let endsAlone = false;
  for (let to = ways.length - 1; to > 0; ) {
    const from = ways[to]?.from ?? 0;
    const own = pieces.slice(from, to);
    if (own.length === 0) endsAlone = true;
    else pages.unshift(fragmentsOf(own, from));
    to = from;
  }
  return { pages, endsAlone };
}

function fragmentsOf(pieces: readonly Piece[], first: number): readonly Fragment[] {
  const fragments: Fragment[] = [];
  for (let i = 0; i < pieces.length; ) {
    const { step, from, to } = pieces[i] as Piece;
    const end = Math.min(pieces.length, to - first);
    const groups = step.groups.slice(first + i - from, first + end - from);
    fragments.push({ step, groups, begins: first + i === from, ends: first + end === to });
    i = end;
  }
  return fragments;
}

/** The same step, its lines closer together by so much over and under each. */
export const closer = (step: Step, by: number): Step => ({
  ...step,
  groups: step.groups.map((group) =>
    group.map((unit) => {
      const { row } = unit;
      if (!row || row.ruled) return unit;
      return { ...unit, row: { ...row, part: high(row.part.height - 2 * by, lifted(row.part, by)) } };
    }),
  ),
});
