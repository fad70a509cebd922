/** Head sizes that go with a thread, threads that a head size suggests, and pairs no common table has. */
import { once } from '../text/once.js';
import { INCH_HEADS, KEYS, METRIC_HEADS } from './head-tables.js';
import { HEXALOBULAR } from './hexalobular-tables.js';
import { type SourceKey, sourceTitle } from './sources.js';
import type { Thread } from './thread.js';

const MM_PER_INCH = 25.4;
/** 13/16 in is 20.64 mm and sold as 20.8: sockets that close are one size. */
const SAME_SIZE_MM = 0.2;

/** A head that a table gives for a thread. */
export interface HeadSize {
  readonly family: string;
  readonly acrossFlatsMm: number;
  /** Printed form, `18 mm` or `7/16 in`. */
  readonly printed: string;
  readonly source: SourceKey;
}

/** Hexagon heads and keys in use for a thread; empty for pipe threads and diameters without a table. */
export const headSizes = once((thread: Thread): readonly HeadSize[] => {
  if (thread.system === 'metric') {
    return [...METRIC_HEADS, ...KEYS].flatMap((f) =>
      (f.sizes[thread.diameterMm] ?? []).map((mm) => ({
        family: f.name,
        acrossFlatsMm: mm,
        printed: `${mm} mm`,
        source: f.source,
      })),
    );
  }
  if (thread.system !== 'unified') return [];
  const size = thread.designation.replace(/-\d+ .*$/, '');
  return INCH_HEADS.flatMap((f) =>
    (f.sizes[size] ?? []).map((inch) => ({
      family: f.name,
      acrossFlatsMm: inch * MM_PER_INCH,
      printed: inchText(inch),
      source: f.source,
    })),
  );
});

/** An outside hexagon is at least this part of its thread's diameter; the largest key of a socket is below it. */
const OUTSIDE_FROM = 0.89;

/** Whether a hexagon of this width across flats (mm) lies inside the head: then a key turns it, not a socket. */
export function isKey(thread: Thread, acrossFlatsMm: number): boolean {
  return acrossFlatsMm < OUTSIDE_FROM * thread.diameterMm;
}

/** A pair that no table has: what the tables give for the thread, and what threads the head suggests. */
export interface OddHead {
  readonly usual: readonly HeadSize[];
  readonly suggests: readonly string[];
  readonly sources: readonly string[];
}

/**
 * Judges a width across flats (mm) against a thread. Undefined means nothing to say: the pair is in a table, or no
 * table covers the thread. An inch head on a metric wheel stud (and the reverse) counts as its nearest size.
 */
export function headSuspicious(thread: Thread, acrossFlatsMm: number): OddHead | undefined {
  const usual = headSizes(thread);
  if (usual.length === 0 || usual.some((h) => sameSize(h.acrossFlatsMm, acrossFlatsMm))) return undefined;
  return {
    usual,
    suggests: threadsForHead(acrossFlatsMm),
    sources: [...new Set(usual.map((h) => sourceTitle(h.source)))],
  };
}

/** Judges a hexalobular size (`T40`, `E12`) the same way; a trailing plus or letter (`T40H`) is not read. */
export function hexalobularSuspicious(
  thread: Thread,
  size: string,
): { usual: readonly string[]; source: string } | undefined {
  const wanted = /^[TE]\d+/.exec(size.trim().toUpperCase())?.[0];
  if (thread.system !== 'metric' || !wanted) return undefined;
  const usual = hexalobularSizes(thread).filter((s) => s[0] === wanted[0]);
  return usual.length === 0 || usual.includes(wanted)
    ? undefined
    : { usual, source: sourceTitle('ISO10664') };
}

/** Hexalobular sizes in use for a metric thread, `T` internal and `E` external. */
export function hexalobularSizes(thread: Thread): readonly string[] {
  return [...new Set(HEXALOBULAR.flatMap((f) => f.sizes[thread.diameterMm] ?? []))];
}

/** Thread diameters that a width across flats (mm) suggests by the hexagon head tables alone: `M12`, `7/16`. */
export function threadsForHead(acrossFlatsMm: number): readonly string[] {
  const plain = METRIC_HEADS.filter((f) => f.source !== 'PRACTICE' && f.source !== 'MEMORY');
  const metric = plain.flatMap((f) =>
    Object.entries(f.sizes).flatMap(([d, sizes]) =>
      sizes.some((s) => Math.abs(s - acrossFlatsMm) < 0.06) ? [`M${d}`] : [],
    ),
  );
  const inch = INCH_HEADS.filter((f) => f.source === 'B18_2_1').flatMap((f) =>
    Object.entries(f.sizes).flatMap(([d, sizes]) =>
      sizes.some((s) => Math.abs(s * MM_PER_INCH - acrossFlatsMm) < 0.06) ? [d] : [],
    ),
  );
  return [...new Set([...metric, ...inch])];
}

/** An inch size as a file writes it, where a hyphen would make a range: `1 1/8 in`. */
export const inchText = (inch: number): string => `${inchFraction(inch).replace('-', ' ')} in`;

/** A fraction of an inch as a wrench is marked: `7/16`, `1-1/8`. Sixty-fourths at the finest. */
export function inchFraction(inch: number): string {
  const whole = Math.floor(inch + 1e-9);
  let top = Math.round((inch - whole) * 64);
  let bottom = 64;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  if (top === 0) return String(whole);
  return whole > 0 ? `${whole}-${top}/${bottom}` : `${top}/${bottom}`;
}

function sameSize(a: number, b: number): boolean {
  return Math.abs(a - b) <= SAME_SIZE_MM;
}
