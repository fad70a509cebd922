// F201: a torque that stretches the bolt past its yield.
import { boltCatalogue } from './bolt-example.js';
import { defineDiagnostic } from './define.js';

export interface JointWords {
  readonly torque: string;
  /** `M8×1.25, class 8.8`. */
  readonly joint: string;
  /** Share of yield or proof in whole per cent. */
  readonly percent: number;
  /** Chart torque in the written unit, where the class is known. */
  readonly chart: string | undefined;
  readonly suggestion: string | undefined;
  readonly condition: string | undefined;
}

export const overYield = defineDiagnostic<JointWords>({
  code: 'F201',
  name: 'over-yield',
  severity: 'error',
  message: (d) => `${d.torque} takes ${d.joint} to ${d.percent} % of its yield load`,
  advice: (d) =>
    [
      d.suggestion,
      d.chart === undefined
        ? undefined
        : `a chart gives about ${d.chart}${d.condition === undefined ? '' : ` (${d.condition})`}`,
    ]
      .filter((s) => s !== undefined)
      .join('; ') || undefined,
  why: `A bolt tightened past its yield has lost its clamp force for good: it breaks now, or works loose later on the road.

The preload is T = K·d·F at the usual K of what is on the threads (Shigley, eq. 8-27), held against the yield load of ISO 898-1, SAE J429 or ISO 3506-1. Without a class, only what no class 12.9 bolt could stand is reported. The range of K is shown in the hover and never judged: ordinary chart values are silent.`,
  wrong: boltCatalogue(
    '2 of M8x1.25, class 8.8, hex 13 mm',
    'torque 52 N·m, per "S-1"',
    '#          ^^^^^^ F201',
  ),
  right: boltCatalogue('2 of M8x1.25, class 8.8, hex 13 mm', 'torque 25 N·m, per "S-1"'),
});
