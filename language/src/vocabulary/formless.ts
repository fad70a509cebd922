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
  'spring',
  'latch',
  'quarter-turn',
  'cap',
  'self-tapping-screw',
]);

/** Whether the word behind `of` names such a retainer, by itself or closer: `push-clip`, `return-spring`. */
export function isRetainer(text: string): boolean {
  return FORMLESS.has(text) || FORMLESS.has(text.slice(text.search(/[^- ]+$/)));
}

/** Whether the word means something with a thread that is not told: `6 of bolts`. */
export const isBareBolt = (text: string): boolean =>
  !isRetainer(text) && /(?:^|[- ])(?:bolt|nut|screw|stud|plug)s?$/i.test(text);
