// Which bans a page of steps shows in its running head: those in force at its top, and those that begin on it.
import type { Between, Unit } from './units.js';

export interface ShownBans {
  /** In force behind the last line so far. */
  readonly live: ReadonlySet<string>;
  /** Of the page, with those that end on it. */
  readonly shown: ReadonlySet<string>;
}

const NONE: ReadonlySet<string> = new Set();
export const NO_BANS: ShownBans = { live: NONE, shown: NONE };

/** At the top of the next page. */
export const onNextPage = ({ live }: ShownBans): ShownBans => ({ live, shown: live });

/** With more groups on the page. */
export function withGroups(bans: ShownBans, groups: readonly (readonly Unit[])[]): ShownBans {
  let now = bans;
  for (const { before, after } of groups.flat())
    for (const one of [...before, ...after]) now = noted(now, one);
  return now;
}

/** A ban is on the page on which it begins, and still on that on which it ends. */
function noted(bans: ShownBans, { ban }: Between): ShownBans {
  if (!ban) return bans;
  const live = new Set(bans.live);
  if (ban.edge === 'start') live.add(ban.id);
  else live.delete(ban.id);
  return { live, shown: new Set(bans.shown).add(ban.id) };
}
