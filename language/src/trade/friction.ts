/**
 * Nut factor K of T = K·d·F by lubrication and finish: the nominal value a joint is judged at, and the range
 * that is shown beside it and never judged (charts tighten to 75 % of proof at K 0.2, which is 100 % at K 0.15).
 */
import type { SourceKey } from './sources.js';

/** What is on the threads, as the source file says it. */
export type Lubrication = 'dry' | 'oiled' | 'anti-seize' | 'threadlocker' | 'grease' | 'ptfe';

/** Surface of the fastener where it is stated. */
export type Finish = 'plain' | 'black' | 'zinc' | 'cadmium' | 'hot-dip galvanised' | 'stainless';

/** K for one condition: nominal, and the range seen in the books. */
export interface NutFactor {
  readonly nominal: number;
  readonly low: number;
  readonly high: number;
  readonly condition: string;
  readonly source: SourceKey;
}

interface FrictionRow extends NutFactor {
  readonly lubrication?: Lubrication;
  readonly finish?: Finish;
}

/**
 * First row whose stated fields all match wins, so pairs stand before single conditions.
 * Threadlocker is judged at 0.18 (Shigley's “lubricated”): wet threadlocker measures 0.11 to 0.20, and the makers'
 * torques for such bolts are chart values.
 */
export const FRICTION: readonly FrictionRow[] = [
  {
    lubrication: 'oiled',
    finish: 'stainless',
    nominal: 0.2,
    low: 0.15,
    high: 0.25,
    condition: 'stainless, oiled',
    source: 'BICKFORD',
  },
  {
    lubrication: 'oiled',
    finish: 'hot-dip galvanised',
    nominal: 0.16,
    low: 0.12,
    high: 0.2,
    condition: 'galvanised, oiled',
    source: 'BICKFORD',
  },
  { lubrication: 'oiled', nominal: 0.15, low: 0.12, high: 0.18, condition: 'oiled', source: 'MOTT' },
  { lubrication: 'grease', nominal: 0.15, low: 0.1, high: 0.18, condition: 'greased', source: 'MOTT' },
  {
    lubrication: 'anti-seize',
    nominal: 0.12,
    low: 0.09,
    high: 0.23,
    condition: 'anti-seize',
    source: 'SHIGLEY',
  },
  { lubrication: 'ptfe', nominal: 0.13, low: 0.1, high: 0.15, condition: 'PTFE film', source: 'BICKFORD' },
  {
    lubrication: 'threadlocker',
    nominal: 0.18,
    low: 0.11,
    high: 0.2,
    condition: 'threadlocker, wet',
    source: 'SHIGLEY',
  },
  { finish: 'black', nominal: 0.3, low: 0.2, high: 0.35, condition: 'black, dry', source: 'SHIGLEY' },
  {
    finish: 'hot-dip galvanised',
    nominal: 0.25,
    low: 0.16,
    high: 0.37,
    condition: 'hot-dip galvanised, dry',
    source: 'BICKFORD',
  },
  {
    finish: 'stainless',
    nominal: 0.2,
    low: 0.15,
    high: 0.3,
    condition: 'stainless, dry',
    source: 'BICKFORD',
  },
  { finish: 'cadmium', nominal: 0.16, low: 0.11, high: 0.2, condition: 'cadmium plated', source: 'SHIGLEY' },
  { finish: 'zinc', nominal: 0.2, low: 0.15, high: 0.27, condition: 'zinc plated', source: 'SHIGLEY' },
  { lubrication: 'dry', nominal: 0.2, low: 0.15, high: 0.3, condition: 'dry', source: 'MOTT' },
  { nominal: 0.2, low: 0.15, high: 0.3, condition: 'as delivered', source: 'SHIGLEY' },
];

/** K for a stated condition; nothing stated gives 0.20, the value the usual charts are printed at. */
export function nutFactor(
  condition: { lubrication?: Lubrication | undefined; finish?: Finish | undefined } = {},
): NutFactor {
  const match = FRICTION.find(
    (r) =>
      (r.lubrication === undefined || r.lubrication === condition.lubrication) &&
      // A lubricant covers the finish: `black, dry` must not be used for an oiled black bolt.
      (r.finish === undefined ||
        (r.finish === condition.finish && (r.lubrication !== undefined || !wet(condition.lubrication)))),
  );
  return match ?? (FRICTION[FRICTION.length - 1] as FrictionRow);
}

/** True for what changes K from the dry value a spec is usually printed for. */
export function wet(lubrication: Lubrication | undefined): boolean {
  return lubrication !== undefined && lubrication !== 'dry';
}

/**
 * A dry spec used on a lubricated thread: the torque that gives the same preload, T·K(wet)/K(dry), N·m.
 * The figure is for the message; the maker's own wet torque comes first. Source: T = K·d·F (Shigley eq. 8-27).
 */
export function lubricantOnDrySpec(
  dryTorqueNm: number,
  lubrication: Lubrication,
): { factor: number; torqueNm: number } {
  const factor = nutFactor({ lubrication }).nominal / nutFactor({ lubrication: 'dry' }).nominal;
  return { factor, torqueNm: dryTorqueNm * factor };
}
