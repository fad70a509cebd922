/**
 * Reads a thread designation the way a workshop writes it (`M12x1.75`, `1/2-13 UNC`, `#10-32`, `1/4-18 NPT`,
 * `G1/4`) and gives its diameter, pitch and stress area.
 */
import { onceForText } from '../text/once.js';
import type { SourceKey } from './sources.js';
import {
  METRIC_FINE_ONLY,
  METRIC_THREADS,
  NPT_THREADS,
  type PipeRow,
  UNIFIED_THREADS,
  type UnifiedRow,
  WHITWORTH_PIPE_THREADS,
} from './thread-tables.js';

const MM_PER_INCH = 25.4;
const PIPE_SIZE = '(\\d+(?:[ -]\\d+/\\d+)?|\\d+/\\d+)';
const TAPER = new RegExp(`^${PIPE_SIZE}(?: ?- ?(\\d+(?:\\.5|[ -]1/2)?))? ?(NPTF?)$`, 'i');
const LETTER_FIRST = new RegExp(`^(G|R|Rc|Rp|BSPP|BSPT) ?${PIPE_SIZE}(?: ?- ?(\\d+))?$`, 'i');
const LETTER_LAST = new RegExp(`^${PIPE_SIZE}(?: ?- ?(\\d+))? ?(BSPP|BSPT)$`, 'i');

/** A thread that was understood. `known` says whether its standard lists this diameter with this pitch. */
export interface Thread {
  readonly system: 'metric' | 'unified' | 'npt' | 'whitworth-pipe';
  /** Printed form, `M12×1.75` or `1/2-13 UNC`. */
  readonly designation: string;
  /** Form the formatter writes in a source file, without signs that cannot be typed: `M12x1.75`. */
  readonly written: string;
  readonly diameterMm: number;
  readonly pitchMm: number;
  /** Tensile stress area, mm²; absent for pipe threads, which are not tightened by stretch. */
  readonly stressAreaMm2?: number;
  readonly series: 'coarse' | 'fine' | 'UNC' | 'UNF' | 'UN' | 'NPT' | 'NPTF' | 'G' | 'R' | 'Rc' | 'Rp';
  readonly leftHand: boolean;
  readonly known: boolean;
  /** Nearest listed thread when this one is not listed. */
  readonly nearest?: string;
  readonly source: SourceKey;
}

/** Text that is no thread, with the nearest one when there is one. */
export interface ThreadProblem {
  readonly problem: string;
  readonly nearest?: string;
}

/**
 * Reads a thread. A pitch the standard does not list still gives a thread, with `known: false` and the nearest
 * listed one; text that cannot be a thread gives a problem. Source: ISO 261, ASME B1.1, ASME B1.20.1, ISO 228-1.
 */
export const readThread = onceForText((text: string): Thread | ThreadProblem => {
  const leftHand = /[\s-]LH\s*$/i.test(text);
  const plain = text
    .replace(/[\s-]LH\s*$/i, '')
    .replace(/[\s-]\d[a-h](\d[a-h])?\s*$/i, '')
    .replace(/["”″]/g, '')
    .replace(/×/g, 'x')
    .replace(/⁄/g, '/')
    .replace(/[‐‑–−]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
  return (
    readMetric(plain, leftHand) ??
    readPipe(plain, leftHand) ??
    readUnified(plain, leftHand) ?? {
      problem: `“${text.trim()}” is not a thread; write it as M12x1.75, 1/2-13 UNC, 1/4-18 NPT or G1/4`,
    }
  );
});

/** Tells a thread from a problem. */
export function isThread(value: Thread | ThreadProblem): value is Thread {
  return 'diameterMm' in value;
}

/**
 * Tensile stress area, mm². Metric: ISO 898-1, π/4·((d2+d3)/2)² with d3 = d − 1.226869·P. Unified: mean of pitch
 * and minor diameter, minor = d − 1.299038·p (Shigley, table 8-2 note). The two are not interchangeable.
 */
export function stressAreaMm2(system: 'metric' | 'unified', diameterMm: number, pitchMm: number): number {
  const pitchDiameter = diameterMm - 0.649519 * pitchMm;
  const minor = diameterMm - (system === 'metric' ? 1.226869 : 1.299038) * pitchMm;
  return (Math.PI / 4) * ((pitchDiameter + minor) / 2) ** 2;
}

function readMetric(text: string, leftHand: boolean): Thread | ThreadProblem | undefined {
  const match = /^(M ?)?(\d+(?:[.,]\d+)?)(?: ?[x*-] ?(\d+(?:[.,]\d+)?))?$/i.exec(text);
  if (!match?.[2]) return undefined;
  const diameterMm = decimal(match[2]);
  if (!match[1]) {
    // `12x1.75` can only be metric; `10-32` and `12` cannot be told and are left to the other readers.
    if (!/x/i.test(text)) return undefined;
    return { problem: `“${text}” lacks its letter`, nearest: `M${text.replace(/\s/g, '').toLowerCase()}` };
  }
  const row = METRIC_THREADS.find((r) => r.diameterMm === diameterMm);
  const fineOnly = METRIC_FINE_ONLY.find((r) => r.diameterMm === diameterMm);
  if (match[3] === undefined) {
    if (row) return metricThread(diameterMm, row.coarseMm, 'coarse', true, leftHand);
    const nearest = nearestMetric(diameterMm);
    return fineOnly
      ? {
          problem: `M${diameterMm} has no coarse pitch; say which`,
          nearest: `M${diameterMm}x${pitchText(fineOnly.fineMm[0] ?? 1.5)}`,
        }
      : { problem: `M${diameterMm} is not a diameter of ISO 261`, nearest };
  }
  const pitchMm = decimal(match[3]);
  if (!(pitchMm > 0) || pitchMm >= diameterMm / 2) {
    return {
      problem: `${match[3]} mm cannot be the pitch of M${diameterMm}`,
      nearest: nearestMetric(diameterMm),
    };
  }
  const pitches = row ? [row.coarseMm, ...row.fineMm] : (fineOnly?.fineMm ?? []);
  const known = pitches.includes(pitchMm);
  const thread = metricThread(
    diameterMm,
    pitchMm,
    row?.coarseMm === pitchMm ? 'coarse' : 'fine',
    known,
    leftHand,
  );
  if (known) return thread;
  const near =
    pitches.length > 0 ? `M${diameterMm}x${pitchText(closest(pitches, pitchMm))}` : nearestMetric(diameterMm);
  return { ...thread, nearest: near };
}

function metricThread(
  d: number,
  p: number,
  series: 'coarse' | 'fine',
  known: boolean,
  leftHand: boolean,
): Thread {
  const hand = leftHand ? '-LH' : '';
  return {
    system: 'metric',
    designation: `M${d}×${pitchText(p)}${hand}`,
    written: `M${d}x${pitchText(p)}${hand}`,
    diameterMm: d,
    pitchMm: p,
    stressAreaMm2: stressAreaMm2('metric', d, p),
    series,
    leftHand,
    known,
    source: 'ISO261',
  };
}

/** The trade writes a whole pitch with its zero (`M6x1.0`), so that it cannot be taken for a length (`M6x20`). */
function pitchText(pitchMm: number): string {
  return Number.isInteger(pitchMm) ? `${pitchMm}.0` : String(pitchMm);
}

function nearestMetric(diameterMm: number): string {
  return `M${closest(
    METRIC_THREADS.map((r) => r.diameterMm),
    diameterMm,
  )}`;
}

function readPipe(text: string, leftHand: boolean): Thread | ThreadProblem | undefined {
  const taper = TAPER.exec(text);
  if (taper?.[1] && taper[3]) {
    const perInch = taper[2]?.replace(/[ -]1\/2/, '.5');
    return pipeThread(
      NPT_THREADS,
      'npt',
      taper[3].toUpperCase() as 'NPT' | 'NPTF',
      taper[1],
      perInch,
      leftHand,
    );
  }
  const parallel = LETTER_FIRST.exec(text);
  const trailing = LETTER_LAST.exec(text);
  const letter = parallel?.[1] ?? trailing?.[3];
  const written = parallel?.[2] ?? trailing?.[1];
  if (!letter || !written) return undefined;
  const series = pipeLetter(letter);
  return pipeThread(
    WHITWORTH_PIPE_THREADS,
    'whitworth-pipe',
    series,
    written,
    parallel?.[3] ?? trailing?.[2],
    leftHand,
  );
}

function pipeLetter(letter: string): 'G' | 'R' | 'Rc' | 'Rp' {
  const lower = letter.toLowerCase();
  if (lower === 'bspp' || lower === 'g') return 'G';
  if (lower === 'rc') return 'Rc';
  return lower === 'rp' ? 'Rp' : 'R';
}

function pipeThread(
  table: readonly PipeRow[],
  system: 'npt' | 'whitworth-pipe',
  series: 'NPT' | 'NPTF' | 'G' | 'R' | 'Rc' | 'Rp',
  size: string,
  perInch: string | undefined,
  leftHand: boolean,
): Thread | ThreadProblem {
  const row = table.find((r) => r.size === size.replace(' ', '-'));
  const print = (r: PipeRow) =>
    system === 'npt' ? `${r.size}-${r.perInch} ${series}` : `${series}${r.size}`;
  if (!row) return { problem: `${size} is not a size of ${series} pipe thread` };
  if (perInch !== undefined && Number(perInch) !== row.perInch) {
    return {
      problem: `${series} ${row.size} has ${row.perInch} threads per inch, not ${perInch}`,
      nearest: print(row),
    };
  }
  return {
    system,
    designation: print(row),
    written: print(row),
    diameterMm: row.diameterMm,
    pitchMm: MM_PER_INCH / row.perInch,
    series,
    leftHand,
    known: true,
    source: row.source,
  };
}

function readUnified(text: string, leftHand: boolean): Thread | ThreadProblem | undefined {
  const match =
    /^(?:(#|no\.? ?))?(\d+[ -]\d+\/\d+|\d+\/\d+|\.\d+|0\.\d+|\d+)(?: ?[-x] ?(\d+))?(?: (UNC|UNF|UNEF|UN|UNS|NC|NF))?$/i.exec(
      text,
    );
  if (!match?.[2] || (!match[3] && !match[4])) return undefined;
  const row = unifiedRow(match[1] !== undefined, match[2]);
  if (!row) return { problem: `${match[2]} is not a size of ASME B1.1 known here (#4 to 1-1/2 in)` };
  const asked = match[4]?.toUpperCase().replace(/^N/, 'UN');
  const perInch = match[3] ? Number(match[3]) : asked === 'UNF' ? row.unf : row.unc;
  if (!(perInch >= 4 && perInch <= 80))
    return { problem: `${perInch} threads per inch cannot be right for ${row.size}` };
  const series = perInch === row.unc ? 'UNC' : perInch === row.unf ? 'UNF' : 'UN';
  if ((asked === 'UNC' || asked === 'UNF') && series !== 'UN' && asked !== series) {
    return {
      problem: `${row.size}-${perInch} is ${series}, not ${asked}`,
      nearest: `${row.size}-${perInch} ${series}`,
    };
  }
  const known = series !== 'UN' || perInch === row.uns;
  const diameterMm = row.diameterIn * MM_PER_INCH;
  const pitchMm = MM_PER_INCH / perInch;
  const designation = `${row.size}-${perInch} ${series !== 'UN' ? series : perInch === row.uns ? 'UNS' : (asked ?? 'UN')}${leftHand ? '-LH' : ''}`;
  return {
    system: 'unified',
    designation,
    written: designation,
    diameterMm,
    pitchMm,
    stressAreaMm2: stressAreaMm2('unified', diameterMm, pitchMm),
    series,
    leftHand,
    known,
    ...(known ? {} : { nearest: nearestUnified(row, perInch) }),
    source: 'B1_1',
  };
}

/** A whole number names a number size (`10-32`) except 1, which is one inch; `#` always names a number size. */
function unifiedRow(numbered: boolean, size: string): UnifiedRow | undefined {
  const name = size.replace(' ', '-');
  if (numbered) return UNIFIED_THREADS.find((r) => r.size === `#${name}`);
  if (name.includes('.')) return UNIFIED_THREADS.find((r) => Math.abs(r.diameterIn - Number(name)) < 0.0006);
  return UNIFIED_THREADS.find((r) => r.size === name) ?? UNIFIED_THREADS.find((r) => r.size === `#${name}`);
}

function nearestUnified(row: UnifiedRow, perInch: number): string {
  const near = closest([row.unc, row.unf], perInch);
  return `${row.size}-${near} ${near === row.unc ? 'UNC' : 'UNF'}`;
}

function closest(values: readonly number[], target: number): number {
  return values.reduce(
    (best, v) => (Math.abs(v - target) < Math.abs(best - target) ? v : best),
    values[0] ?? target,
  );
}

function decimal(text: string): number {
  return Number(text.replace(',', '.'));
}
