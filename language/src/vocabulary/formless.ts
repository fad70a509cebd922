// Retainers without a thread: `3 of clip`. They hold as soon as they are on; common practice.

export const FORMLESS: ReadonlySet<string> = new Set([
  'clip',
  'circlip',
  'clamp',
  'pin',
  'split-pin',
  'band',
  'rivet',
  'key',
  'roll-pin',
  'spring-clip',
  'tie',
  'strap',
  'cotter',
  'snap-ring',
]);
