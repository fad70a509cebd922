/** Coolant mixes: which glycol, freeze point by share, and how much to drain and replace to reach a share. */
import { type SourceKey, sourceTitle } from './sources.js';

/** What a coolant is made of beside water. */
export type Glycol = 'ethylene' | 'propylene';

/**
 * The glycols that a coolant may be of by the type that its specification names: types I and III of ASTM D3306 are
 * ethylene, II and IV propylene. Both where no type is named.
 */
export function glycolsOf(grade: string): readonly Glycol[] {
  const type = /\btype (I{1,3}|IV)\b/i.exec(grade)?.[1]?.toUpperCase();
  if (type === undefined) return ['ethylene', 'propylene'];
  return type === 'I' || type === 'III' ? ['ethylene'] : ['propylene'];
}

/** Freeze points (°C) by share of glycol, percent by volume. */
const FREEZE_POINTS: Readonly<
  Record<Glycol, { rows: readonly (readonly [percent: number, celsius: number])[]; source: SourceKey }>
> = {
  ethylene: {
    source: 'ASHRAE_EG',
    rows: [
      [0, 0],
      [10, -3.6],
      [20, -9],
      [25, -12.1],
      [30, -15.7],
      [35, -19.9],
      [40, -24.8],
      [45, -30.5],
      [50, -37.1],
      [55, -44.4],
      [60, -52],
    ],
  },
  propylene: {
    source: 'LANGE',
    rows: [
      [0, 0],
      [5, -1.1],
      [10, -2.2],
      [15, -3.9],
      [20, -6.7],
      [25, -8.9],
      [30, -12.8],
      [35, -16.1],
      [40, -20.6],
      [45, -26.7],
      [50, -33.3],
    ],
  },
};

/**
 * Freeze point (°C) of a mix with `percent` glycol by volume, by straight line between the table's rows. Undefined
 * outside the table: above 60 % (50 % propylene) protection stops improving and soon worsens.
 */
export function coolantFreezePoint(
  glycol: Glycol,
  percent: number,
): { celsius: number; source: string } | undefined {
  const { rows, source } = FREEZE_POINTS[glycol];
  const upper = rows.findIndex(([p]) => p >= percent);
  const [high, low] = [rows[upper], rows[Math.max(0, upper - 1)]];
  if (!high || !low || !(percent >= 0)) return undefined;
  const share = high[0] === low[0] ? 0 : (percent - low[0]) / (high[0] - low[0]);
  return { celsius: low[1] + share * (high[1] - low[1]), source: sourceTitle(source) };
}

/** How much to drain, in the unit of the system's volume, and with what to replace it. */
interface TopUp {
  readonly drain: number;
  readonly refillWith: 'concentrate' | 'water' | 'nothing';
}

/**
 * Drain-and-replace to take a system of `volume` (litres or any one unit) from one glycol share to another (both 0–1): concentrate x =
 * V·(c2 − c1)/(1 − c1), or water x = V·(c1 − c2)/c1 to thin it. Undefined for shares outside 0–1. Computed from the
 * balance of glycol.
 */
export function coolantTopUp(volume: number, fromShare: number, toShare: number): TopUp | undefined {
  const shares = [fromShare, toShare];
  if (!(volume > 0) || shares.some((s) => !(s >= 0 && s <= 1))) return undefined;
  if (fromShare === toShare) return { drain: 0, refillWith: 'nothing' };
  if (toShare > fromShare)
    return { drain: (volume * (toShare - fromShare)) / (1 - fromShare), refillWith: 'concentrate' };
  return { drain: (volume * (fromShare - toShare)) / fromShare, refillWith: 'water' };
}

/** Parts of concentrate and water for a fresh fill, in the unit of its total. */
export function coolantMix(total: number, share: number): { concentrate: number; water: number } {
  return { concentrate: total * share, water: total * (1 - share) };
}
