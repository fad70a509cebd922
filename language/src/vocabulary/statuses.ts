// Where a procedure stands on its way from a first draft to the bay.

export const STATUSES = ['draft', 'proved', 'released', 'withdrawn'] as const;
export type Status = (typeof STATUSES)[number];

/** One person, however the initials are typed: `tk` and `TK` are no two people. */
export const personOf = (initials: string): string => initials.normalize('NFKC').toUpperCase();

/** From where each status can be reached. A withdrawn procedure starts again as a draft. */
const FROM: Readonly<Record<Status, readonly Status[]>> = {
  draft: ['proved', 'released', 'withdrawn'],
  proved: ['draft'],
  released: ['proved'],
  withdrawn: ['released'],
};

/** The statuses that a procedure can take from the one it has. */
export function statusesAfter(from: Status): Status[] {
  return STATUSES.filter((status) => FROM[status].includes(from));
}
