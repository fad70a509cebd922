// The state of a set of fasteners: how many are how tight. Written as one word so that equal states are equal values.

export interface Counts {
  readonly torqued: number;
  readonly snug: number;
  readonly started: number;
  readonly loose: number;
  readonly out: number;
  /** Torque stages done by all of the set; 0 when none. */
  readonly stage: number;
}

const known = new Map<string, Counts>();

export function encode(c: Counts): string {
  const word = `${c.torqued} ${c.snug} ${c.started} ${c.loose} ${c.out} ${c.stage}`;
  if (!known.has(word)) known.set(word, c);
  return word;
}

export function decode(word: string): Counts {
  const found = known.get(word);
  if (found) return found;
  const [torqued = 0, snug = 0, started = 0, loose = 0, out = 0, stage = 0] = word.split(' ').map(Number);
  return { torqued, snug, started, loose, out, stage };
}

export function allTorqued(n: number): string {
  return encode({ torqued: n, snug: 0, started: 0, loose: 0, out: 0, stage: 0 });
}

export function size(c: Counts): number {
  return c.torqued + c.snug + c.started + c.loose + c.out;
}

/** Loosens `k`, the tightest first. */
export function loosened(c: Counts, k: number): Counts {
  const fromTorqued = Math.min(c.torqued, k);
  const fromSnug = Math.min(c.snug, k - fromTorqued);
  const moved = fromTorqued + fromSnug;
  return {
    ...c,
    torqued: c.torqued - fromTorqued,
    snug: c.snug - fromSnug,
    loose: c.loose + moved,
    stage: moved > 0 ? 0 : c.stage,
  };
}

/** Takes `k` out, the tightest first: partial counts leave the loosened ones in. */
export function takenOut(c: Counts, k: number): Counts {
  let left = k;
  const take = (n: number): number => {
    const taken = Math.min(n, left);
    left -= taken;
    return n - taken;
  };
  const torqued = take(c.torqued);
  const snug = take(c.snug);
  const started = take(c.started);
  const loose = take(c.loose);
  return { torqued, snug, started, loose, out: c.out + (k - left), stage: 0 };
}

/** Puts `k` in by hand. */
export function started(c: Counts, k: number): Counts {
  const moved = Math.min(c.out, k);
  return { ...c, out: c.out - moved, started: c.started + moved };
}

/** All that are in become snug. */
export function snugged(c: Counts): Counts {
  return { ...c, snug: c.snug + c.started + c.loose, started: 0, loose: 0 };
}

/** All that are in become torqued. */
export function torqued(c: Counts): Counts {
  return { torqued: size(c) - c.out, snug: 0, started: 0, loose: 0, out: c.out, stage: 0 };
}

/** All that are in reach stage `k` of several. */
export function staged(c: Counts, k: number): Counts {
  return { ...snugged({ ...c, snug: c.snug + c.torqued, torqued: 0 }), stage: k };
}
