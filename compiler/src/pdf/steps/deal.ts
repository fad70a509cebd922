// Which parts of a step stand on a page together. All heights are known before anything is set, because only the whole
// job shows whether a break here saves a page or parts a step for nothing.
import type { Rail } from '../../document/blocks.js';
import { HAIR } from './frame.js';
import { high, lifted, type Part } from './set.js';
import { NO_BANS, onNextPage, type ShownBans, withGroups } from './shown-bans.js';
import { groupHigh, type Unit } from './units.js';

/** A step goes to the next page whole when it leaves no more than this much of its own page empty; else it is parted. */
const MOST_BLANK = 60;
/** What is carried over is at least so high: a page does not begin with the one last line of a step. */
const LEAST_TAIL = 26;
/** A step does not go to a page of its own from one that would keep less than this. */
const LEAST_LEFT = 90;
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
  /** How far down the last page they reach, in millimetres. */
  readonly reach: number;
  /** How far they could. */
  readonly full: number;
}

/** `room` is the free height of a page that shows these bans. Its head grows with what stands on it, never the other way. */
export function deal(steps: readonly Step[], room: (bans: ReadonlySet<string>) => number): Dealt {
  const pages: Fragment[][] = [[]];
  let page: Page = { y: 0, bans: NO_BANS };
  const free = (bans: ShownBans) => room(bans.shown) - HAIR;
  const turn = () => {
    pages.push([]);
    page = { y: 0, bans: onNextPage(page.bans) };
  };
  for (const step of steps) {
    const groups = step.groups.length === 0 ? [[]] : step.groups;
    const tall = groups.map((group, i) => groupHigh(group) + (i === 0 ? step.head.height : 0));
    for (let start = 0; start < groups.length; ) {
      const count = fitting(groups.slice(start), tall.slice(start), page, free);
      if (count === 0) {
        turn();
        continue;
      }
      const end = start + count;
      const own = groups.slice(start, end);
      pages.at(-1)?.push({ step, groups: own, begins: start === 0, ends: end === groups.length });
      page = { y: page.y + sum(tall.slice(start, end)), bans: withGroups(page.bans, own) };
      start = end;
      if (start < groups.length) turn();
    }
  }
  return { pages: pages.filter((one) => one.length > 0), reach: page.y, full: free(page.bans) };
}

/** How far down a page is filled, and the bans that it shows so far. */
interface Page {
  readonly y: number;
  readonly bans: ShownBans;
}

/** The same pages, and on one more the last step or, where that is longer than `most`, the last lines of it. */
export function lastApart({ pages, reach: used, full }: Dealt, most: number): Dealt | undefined {
  const page = pages.at(-1) ?? [];
  const last = page.at(-1);
  if (!last) return undefined;
  const { step, groups } = last;
  const before = [...pages.slice(0, -1), page.slice(0, -1)];
  const whole = step.head.height + sum(groups.map(groupHigh));
  if (last.begins && used - whole >= LEAST_LEFT && whole <= most)
    return { pages: [...before, [last]], reach: whole, full };
  let [from, reach] = [groups.length, 0];
  while (from > 1 && reach < LEAST_TAIL) {
    from -= 1;
    reach += groupHigh(groups[from] ?? []);
  }
  if (reach < LEAST_TAIL || reach > most) return undefined;
  const begun: Fragment = { ...last, groups: groups.slice(0, from), ends: false };
  const rest: Fragment = { ...last, groups: groups.slice(from), begins: false };
  return { pages: [...pages.slice(0, -1), [...page.slice(0, -1), begun], [rest]], reach, full };
}

/** The same pages, the last step whole on the last of them: no higher than `most`, and not where it leaves the page before nearly empty. */
export function lastTogether({ pages, reach, full }: Dealt, most: number): Dealt | undefined {
  const [rest, other] = pages.at(-1) ?? [];
  const page = pages.at(-2) ?? [];
  const begun = page.at(-1);
  if (!rest || other || rest.begins || !begun?.begins) return undefined;
  const moved = begun.step.head.height + sum(begun.groups.map(groupHigh));
  const left = sum(
    page
      .slice(0, -1)
      .map(({ step, groups, begins }) => (begins ? step.head.height : 0) + sum(groups.map(groupHigh))),
  );
  if (moved + reach > most || left < LEAST_LEFT) return undefined;
  const whole: Fragment = { ...begun, groups: begun.step.groups, ends: true };
  return { pages: [...pages.slice(0, -2), page.slice(0, -1), [whole]], reach: moved + reach, full };
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

/** How many of the groups go on this page. `full` is the height of a page that shows these bans. */
function fitting(
  groups: Step['groups'],
  tall: readonly number[],
  { y, bans }: Page,
  full: (bans: ShownBans) => number,
): number {
  const total = sum(tall);
  const isFresh = y === 0;
  if (y + total <= full(withGroups(bans, groups))) return tall.length;
  const isWholeOnNext = total <= full(withGroups(onNextPage(bans), groups));
  if (!isFresh && isWholeOnNext && full(bans) - y <= MOST_BLANK) return 0;
  let [count, used, now] = [0, 0, bans];
  for (let next = tall[0]; next !== undefined; next = tall[count]) {
    now = withGroups(now, groups.slice(count, count + 1));
    if (y + used + next > full(now)) break;
    used += next;
    count += 1;
  }
  while (count > 0 && sum(tall.slice(count)) < LEAST_TAIL) count -= 1;
  if (count === 1 && tall.length > 1 && (tall[0] ?? 0) < LEAST_HEAD && !isFresh) return 0;
  return count === 0 && isFresh ? 1 : count;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
