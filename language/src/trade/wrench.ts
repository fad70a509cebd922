/** Which torque wrench to take, what to dial with an adapter, and which socket drive suits. */
import { type SourceKey, sourceTitle } from './sources.js';

/** A torque tool of the house list; the range is the one marked on it, N·m. */
export interface TorqueTool {
  readonly name: string;
  readonly lowNm: number;
  readonly highNm: number;
}

/** The wrench to take. `fit` tells a good choice (20–100 % of its top) from one at the low end of its marks. */
export interface WrenchChoice {
  readonly tool: TorqueTool | undefined;
  readonly fit: 'good' | 'low end' | 'none';
  /** Every tool that can do it, best first. */
  readonly usable: readonly TorqueTool[];
  /** Permissible deviation of a setting tool at this torque, as a share: ±4 % above 10 N·m, ±6 % up to it. */
  readonly toleranceShare: number;
  readonly source: string;
}

/**
 * Chooses a wrench: the torque should lie in 20–100 % of the tool's top value, where it is verified (ISO 6789: checked
 * at 20, 60 and 100 %). The 2017 edition starts the range at the lowest marked value, so a tool marked lower may
 * still be used there, as second choice. The smallest tool that fits reads finest.
 */
export function chooseWrench(torqueNm: number, tools: readonly TorqueTool[]): WrenchChoice {
  const bySize = [...tools].sort((a, b) => a.highNm - b.highNm);
  const inRange = bySize.filter((t) => torqueNm <= t.highNm * (1 + 1e-9) && torqueNm >= t.lowNm * (1 - 1e-9));
  const good = inRange.filter((t) => torqueNm >= 0.2 * t.highNm * (1 - 1e-9));
  const usable = [...good, ...inRange.filter((t) => !good.includes(t))];
  return {
    tool: usable[0],
    fit: good.length > 0 ? 'good' : usable.length > 0 ? 'low end' : 'none',
    usable,
    toleranceShare: torqueNm > 10 ? 0.04 : 0.06,
    source: sourceTitle('ISO6789'),
  };
}

/** The setting to dial with an adapter, or why there is none. */
export type AdapterSetting =
  | { readonly settingNm: number; readonly factor: number; readonly source: string }
  | { readonly problem: string };

/**
 * Setting for a crowfoot or extension: S = T·L/(L + E·cos a), L from the drive to the middle of the grip, E from the
 * drive to the fastener, both in mm; a = 0 in line, 90 square to the handle (no correction), 180 pointing back.
 * Source: NAVEDTRA 14315. Never with a flexible-beam wrench and a handle extension.
 */
export function crowfootSetting(
  torqueNm: number,
  leverMm: number,
  extensionMm: number,
  angleDeg = 0,
): AdapterSetting {
  if (!(leverMm > 0)) return { problem: 'the lever length of the wrench must be known and above zero' };
  const reach = leverMm + extensionMm * Math.cos((angleDeg * Math.PI) / 180);
  // Nearer to the handle the setting grows past any wrench: a bound chosen here, no source.
  if (!(reach > leverMm * 0.25))
    return { problem: 'the adapter reaches back nearly to the handle; turn it square to the handle' };
  const factor = leverMm / reach;
  return { settingNm: torqueNm * factor, factor, source: sourceTitle('NAVEDTRA') };
}

/** A drive of ISO 1174-1 with the torque up to which the trade takes it. */
export interface DriveRow {
  readonly inch: '1/4' | '3/8' | '1/2' | '3/4' | '1';
  readonly mm: number;
  readonly toNm: number;
  /** The largest socket, across the flats, that is sold with it, mm. */
  readonly toFlatsMm: number;
  readonly source: SourceKey;
}

/** Usual drives by torque and size: well inside what the squares are tested to; common practice, from memory. */
const DRIVES: readonly DriveRow[] = [
  { inch: '1/4', mm: 6.3, toNm: 20, toFlatsMm: 14, source: 'PRACTICE' },
  { inch: '3/8', mm: 10, toNm: 75, toFlatsMm: 24, source: 'PRACTICE' },
  { inch: '1/2', mm: 12.5, toNm: 300, toFlatsMm: 36, source: 'PRACTICE' },
  { inch: '3/4', mm: 20, toNm: 1000, toFlatsMm: 60, source: 'PRACTICE' },
  {
    inch: '1',
    mm: 25,
    toNm: Number.POSITIVE_INFINITY,
    toFlatsMm: Number.POSITIVE_INFINITY,
    source: 'PRACTICE',
  },
];

/** The socket drive that suits a torque (N·m) and, where it is known, the size across the flats (mm). */
export function drive(torqueNm: number, flatsMm = 0): DriveRow {
  return (
    DRIVES.find((d) => torqueNm <= d.toNm && flatsMm <= d.toFlatsMm) ??
    (DRIVES[DRIVES.length - 1] as DriveRow)
  );
}
