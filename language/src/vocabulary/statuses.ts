// Where a procedure stands on its way from a first draft to the bay.

export const STATUSES = ['draft', 'proved', 'released', 'withdrawn'] as const;
export type Status = (typeof STATUSES)[number];
