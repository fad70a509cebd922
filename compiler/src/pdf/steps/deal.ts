// Which parts of a step stand on a page together. All heights are known before anything is set, because only the whole
// job shows whether a break here saves a page or parts a step for nothing.
import type { Rail } from '../../document/blocks.js';
import { HAIR } from './frame.js';
import { high, lifted, type Part } from './set.js';
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
}

export function deal(steps: readonly Step[], pageHeight: number): Dealt {
  const full = pageHeight - HAIR;
  const pages: Fragment[][] = [[]];
  let y = 0;
  for (const step of steps) {
    const groups = step.groups.length === 0 ? [[]] : step.groups;
    const tall = groups.map((group, i) => groupHigh(group) + (i === 0 ? step.head.height : 0));
    for (let start = 0; start < groups.length; ) {
      const count = fitting(tall.slice(start), full - y, full);
      if (count === 0) {
        pages.push([]);
        y = 0;
        continue;
      }
      const end = start + count;
      pages.at(-1)?.push({
        step,
        groups: groups.slice(start, end),
        begins: start === 0,
        ends: end === groups.length,
      });
      y += sum(tall.slice(start, end));
      start = end;
      if (start < groups.length) {
        pages.push([]);
        y = 0;
      }
    }
  }
  return { pages: pages.filter((page) => page.length > 0), reach: y };
}

/** The same pages, and on one more the last step or, where that is longer than `most`, the last lines of it. */
export function lastApart({ pages, reach: used }: Dealt, most: number): Dealt | undefined {
  const page = pages.at(-1) ?? [];
  const last = page.at(-1);
  if (!last) return undefined;
  const { step, groups } = last;
  const before = [...pages.slice(0, -1), page.slice(0, -1)];
  const whole = step.head.height + sum(groups.map(groupHigh));
  if (last.begins && used - whole >= LEAST_LEFT && whole <= most)
    return { pages: [...before, [last]], reach: whole };
  let [from, reach] = [groups.length, 0];
  while (from > 1 && reach < LEAST_TAIL) {
    from -= 1;
    reach += groupHigh(groups[from] ?? []);
  }
  if (reach < LEAST_TAIL || reach > most) return undefined;
  const begun: Fragment = { ...last, groups: groups.slice(0, from), ends: false };
  const rest: Fragment = { ...last, groups: groups.slice(from), begins: false };
  return { pages: [...pages.slice(0, -1), [...page.slice(0, -1), begun], [rest]], reach };
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

/** How many of the groups go on this page. `free` is what is left of it, `full` a whole page. */
function fitting(tall: readonly number[], free: number, full: number): number {
  const total = sum(tall);
  const fresh = free >= full;
  if (total <= free) return tall.length;
  if (total <= full && free <= MOST_BLANK) return 0;
  let [count, used] = [0, 0];
  for (let next = tall[0]; next !== undefined && used + next <= free; next = tall[count]) {
    used += next;
    count += 1;
  }
  while (count > 0 && sum(tall.slice(count)) < LEAST_TAIL) count -= 1;
  if (count === 1 && tall.length > 1 && (tall[0] ?? 0) < LEAST_HEAD && !fresh) return 0;
  return count === 0 && fresh ? 1 : count;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);
