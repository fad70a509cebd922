/**
 * The joint check: what preload a torque gives, against proof and yield. Judged at the nominal K only; ordinary
 * chart values (75 % of proof at K 0.2) are silent by design.
 */
import { type Finish, type Lubrication, nutFactor } from './friction.js';
import { type SourceKey, sourceTitle } from './sources.js';
import { type StrengthClass, strength } from './strength.js';
import type { Thread } from './thread.js';

/**
 * Printed loads differ from area × stress by up to 0.6 % (ISO 898-1 tables, M6 8.8), and a chart at 100 % of yield
 * must not tip over on rounding: only past this share is a bolt said to yield.
 */
const YIELD_LIMIT = 1.006;
/** Under this share of proof a torque is asked about. Chosen here, well below any chart; no source. */
const LOW_LIMIT = 0.1;
/** Shares of proof that count as ordinary when a torque is tried a factor of 12 away. Chosen here; no source. */
const ORDINARY = { from: 0.25, to: 1.1 };

/** What a joint check needs. `writtenUnit` is the unit in the source text; it decides what is suggested. */
export interface JointInput {
  readonly thread: Thread;
  readonly class: StrengthClass;
  readonly torqueNm: number;
  readonly lubrication?: Lubrication | undefined;
  readonly finish?: Finish | undefined;
  /** Running torque of a locking nut or insert, N·m: added to the setting, not to the preload. */
  readonly prevailingNm?: number | undefined;
  readonly writtenUnit?: 'N·m' | 'ft·lbf' | 'in·lbf' | undefined;
}

/** The figures behind a verdict, ready for a hover or a message. Forces in N, shares of 1. */
export interface JointCheck {
  readonly preloadN: number;
  readonly kNominal: number;
  readonly kRange: readonly [low: number, high: number];
  /** Preload at both ends of the K range, N; shown, never judged. */
  readonly preloadRangeN: readonly [low: number, high: number];
  readonly proofLoadN: number;
  readonly yieldLoadN: number;
  readonly shareOfProof: number;
  readonly shareOfYield: number;
  /** Torque to dial: the spec plus the prevailing torque (AC 43.13-1B), N·m. */
  readonly settingNm: number;
  /** Chart torque of this joint: 75 % of proof at this K, N·m (Shigley eq. 8-31). */
  readonly chartTorqueNm: number;
  readonly verdict: 'silent' | 'low' | 'yields' | 'inch-foot-exchanged';
  /** Unit that would make sense of the number, where one does. */
  readonly meantUnit?: 'ft·lbf' | 'in·lbf';
  readonly suggestion?: string;
  readonly condition: string;
  readonly judgedAs: string;
  readonly sources: readonly string[];
}

/**
 * Checks a torque against the bolt's proof and yield load: F = T/(K·d) (Shigley eq. 8-27), loads from ISO 898-1,
 * SAE J429 or ISO 3506-1. Undefined where nothing can be said: thread or class not in the books, no torque.
 */
export function checkJoint(input: JointInput): JointCheck | undefined {
  const { thread, torqueNm } = input;
  const area = thread.stressAreaMm2;
  const stresses = thread.known ? strength(input.class, thread) : undefined;
  if (!stresses || area === undefined || !(torqueNm > 0)) return undefined;
  const stainless = input.class.kind === 'stainless' ? 'stainless' : undefined;
  const k = nutFactor({ lubrication: input.lubrication, finish: input.finish ?? stainless });
  const force = (factor: number) => torqueNm / (factor * (thread.diameterMm / 1000));
  const preloadN = force(k.nominal);
  const proofLoadN = area * stresses.proofMPa;
  const yieldLoadN = area * stresses.yieldMPa;
  const shareOfProof = preloadN / proofLoadN;
  const shareOfYield = preloadN / yieldLoadN;
  return {
    preloadN,
    kNominal: k.nominal,
    kRange: [k.low, k.high],
    preloadRangeN: [force(k.high), force(k.low)],
    proofLoadN,
    yieldLoadN,
    shareOfProof,
    shareOfYield,
    settingNm: torqueNm + (input.prevailingNm ?? 0),
    chartTorqueNm: 0.75 * proofLoadN * k.nominal * (thread.diameterMm / 1000),
    ...judge(shareOfProof, shareOfYield, input.writtenUnit),
    condition: k.condition,
    judgedAs: stresses.judgedAs,
    sources: titles([thread.source, stresses.source, k.source, 'SHIGLEY']),
  };
}

type Judgement = Pick<JointCheck, 'verdict' | 'meantUnit' | 'suggestion'>;

/** Over yield is an error; a twelfth that would be ordinary names the exchanged unit; under 10 % is a question. */
function judge(proofShare: number, yieldShare: number, unit: JointInput['writtenUnit']): Judgement {
  const ordinary = (share: number) => share >= ORDINARY.from && share <= ORDINARY.to;
  if (yieldShare > YIELD_LIMIT) {
    if (!ordinary(proofShare / 12)) return { verdict: 'yields' };
    if (unit === 'ft·lbf') {
      return {
        verdict: 'inch-foot-exchanged',
        meantUnit: 'in·lbf',
        suggestion: 'the same number in in·lbf is an ordinary torque for this bolt',
      };
    }
    return {
      verdict: 'yields',
      suggestion: 'a twelfth of it is ordinary: was it converted as ft·lbf where in·lbf was meant?',
    };
  }
  if (proofShare < LOW_LIMIT) {
    if (!ordinary(proofShare * 12)) return { verdict: 'low' };
    if (unit === 'in·lbf') {
      return {
        verdict: 'low',
        meantUnit: 'ft·lbf',
        suggestion: 'the same number in ft·lbf is an ordinary torque for this bolt',
      };
    }
    return {
      verdict: 'low',
      suggestion: 'twelve times it is ordinary: was it converted as in·lbf where ft·lbf was meant?',
    };
  }
  return { verdict: 'silent' };
}

function titles(keys: readonly SourceKey[]): string[] {
  return [...new Set(keys)].map(sourceTitle);
}

/** What torque and angle together do to a bolt. Forces in N. */
export interface AngleStretch {
  readonly snugPreloadN: number;
  readonly addedPreloadN: number;
  /** Snug plus added, held at the yield load where the bolt goes past it. */
  readonly preloadN: number;
  readonly elongationMm: number;
  readonly shareOfYield: number;
  /** True where the turn takes the bolt past yield: usual for stretch bolts, which are then single-use. */
  readonly pastYield: boolean;
  readonly sources: readonly string[];
}

/**
 * Torque plus angle where the grip length is given: snug preload from the torque, then the turn stretches the
 * bolt. The advance P·θ/360 is shared by bolt and clamped parts; `boltShare` of it (0.65 where not known, as in a
 * published worked example) stretches the bolt with stiffness E·As/grip. Figures only, never judged: stretch bolts are meant
 * to yield. Angle in degrees, lengths in mm; undefined where the joint is not in the books.
 */
export function angleStretch(
  input: JointInput & { readonly angleDeg: number; readonly gripMm: number; readonly boltShare?: number },
): AngleStretch | undefined {
  const snug = checkJoint(input);
  const area = input.thread.stressAreaMm2;
  if (!snug || area === undefined || !(input.gripMm > 0) || !(input.angleDeg >= 0)) return undefined;
  const youngMPa = input.class.kind === 'stainless' ? YOUNG_MPA.austenitic : YOUNG_MPA.steel;
  const elongationMm = ((input.thread.pitchMm * input.angleDeg) / 360) * (input.boltShare ?? 0.65);
  const addedPreloadN = (youngMPa * area * elongationMm) / input.gripMm;
  const total = snug.preloadN + addedPreloadN;
  return {
    snugPreloadN: snug.preloadN,
    addedPreloadN,
    preloadN: Math.min(total, snug.yieldLoadN),
    elongationMm,
    shareOfYield: total / snug.yieldLoadN,
    pastYield: total > snug.yieldLoadN,
    sources: [...snug.sources, sourceTitle('PRACTICE')],
  };
}

/** Young's modulus at room temperature, MPa. Common engineering values, from memory. */
const YOUNG_MPA = { steel: 205_000, austenitic: 193_000 };

/** A torque judged without a class: only what no bolt at all could stand, or no wheel could be held with. */
export interface UnclassedCheck {
  readonly verdict: 'yields' | 'low';
  readonly shareOfYield: number;
  readonly judgedAs: string;
}

/**
 * Torque on a thread whose class is not stated, N·m. Past the yield of class 12.9 is past any bolt; under a tenth of
 * the proof load of class 8.8 is asked about on wheel nuts and bolts, which are never weaker (plugs and sensors rightly are as
 * loose as that). Undefined means nothing to say. Source: as {@link checkJoint}; the wheel rule is common practice.
 */
export function checkUnclassed(thread: Thread, torqueNm: number, use?: 'wheel'): UnclassedCheck | undefined {
  const judged = (code: string) =>
    checkJoint({ thread, torqueNm, class: { kind: 'bolt', code, printed: `class ${code}` } });
  const [strongest, usual] = [judged('12.9'), judged('8.8')];
  if (strongest?.verdict === 'yields') {
    return { verdict: 'yields', shareOfYield: strongest.shareOfYield, judgedAs: strongest.judgedAs };
  }
  if (use !== 'wheel' || usual?.verdict !== 'low') return undefined;
  return { verdict: 'low', shareOfYield: usual.shareOfYield, judgedAs: usual.judgedAs };
}
