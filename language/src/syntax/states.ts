// What shops write behind a switch, lever or lock that they mean to set: `key off`. Common practice, no source.

export const STATES: ReadonlySet<string> = new Set([
  'on',
  'off',
  'open',
  'closed',
  'applied',
  'released',
  'locked',
  'unlocked',
]);
