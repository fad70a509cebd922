// The state of a set of fasteners: how many are how tight. Written as one word so that equal states are equal values.

/** How many of the set are in each state; together all of it. */
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

/** The state as a word, for a cell to hold. */
function encode(c: Counts): string {
  const word = `${c.torqued} ${c.snug} ${c.started} ${c.loose} ${c.out} ${c.stage}`;
  if (!known.has(word)) known.set(word, c);
  return word;
}

/** The state that a word of {@link encode} stands for. */
export function decode(word: string): Counts {
  const found = known.get(word);
  if (found) return found;
  const [torqued = 0, snug = 0, started = 0, loose = 0, out = 0, stage = 0] = word.split(' ').map(Number);
  return { torqued, snug, started, loose, out, stage };
}

const whole: string[] = [];

/** The word of `n` fasteners that all have their torque: how a set comes in. */
export function allTorqued(n: number): string {
  whole[n] ??= encode({ torqued: n, snug: 0, started: 0, loose: 0, out: 0, stage: 0 });
  return whole[n];
}

/** How many fasteners the set has. */
export function size(c: Counts): number {
  return c.torqued + c.snug + c.started + c.loose + c.out;
}

/** Loosens `k`, the tightest first. */
function loosened(c: Counts, k: number): Counts {
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
function takenOut(c: Counts, k: number): Counts {
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
function started(c: Counts, k: number): Counts {
  const moved = Math.min(c.out, k);
  return { ...c, out: c.out - moved, started: c.started + moved };
}

/** All that are in become snug. */
function snugged(c: Counts): Counts {
  return { ...c, snug: c.snug + c.started + c.loose, started: 0, loose: 0 };
}

/** All that are in become torqued. */
function torqued(c: Counts): Counts {
  return { torqued: size(c) - c.out, snug: 0, started: 0, loose: 0, out: c.out, stage: 0 };
}

/** All that are in reach stage `k` of several. */
function staged(c: Counts, k: number): Counts {
  return { ...snugged({ ...c, snug: c.snug + c.torqued, torqued: 0 }), stage: k };
}

/** A change of a set's state that is told as a word, on `k` of the set: on all of it without a number. */
type WordChange = (word: string, k?: number) => string;

/** The same few states come up in every set of a job, at every edit: what a change makes of each is worked out once. */
function onWord(change: (c: Counts, k: number) => Counts): WordChange {
  const changes = new Map<string, Map<number, string>>();
  return (word, k) => {
    const c = decode(word);
    const count = k ?? size(c);
    let byCount = changes.get(word);
    if (!byCount) {
      byCount = new Map();
      changes.set(word, byCount);
    }
    let to = byCount.get(count);
    if (to === undefined) {
      to = encode(change(c, count));
      byCount.set(count, to);
    }
    return to;
  };
}

export const wordLoosened = onWord(loosened);
export const wordTakenOut = onWord(takenOut);
export const wordStarted = onWord(started);
/** A retainer without a thread is done once none is out. */
export const wordClipped = onWord((c, k) => {
  const on = started(c, k);
  return on.out === 0 ? torqued(on) : on;
});
export const wordSnugged = onWord(snugged);
export const wordTorqued = onWord(torqued);
/** All that are in reach stage `k` of several. */
export const wordStaged = onWord(staged);
/** A bleed screw: opened and shut again, it is snug whatever it was. */
export const wordReseated = onWord((c) => snugged(loosened(c, size(c))));
