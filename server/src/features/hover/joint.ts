// What a torque does to its joint: clamp force, share of proof, the wrench to take. For hovers and inlay hints.
import {
  type Clause,
  classesOf,
  clausesOf,
  type Line,
  lubricationOf,
  numberOf,
  pathAt,
  type Scope,
  stageTorques,
  type Thing,
  threadOf,
  torqueLines,
  toSI,
  trade,
} from '@baywright/language';
import type { Snapshot } from '../../snapshot.js';
import type { Texts } from '../../texts/index.js';

export interface JointFigures {
  readonly torqueNm: number;
  readonly check: trade.JointCheck | undefined;
  /** Of the nut itself, where the class is that of a nut: preload over its own proof load. */
  readonly shareOfNut: number | undefined;
  readonly wrench: trade.WrenchChoice;
}

/** The figures of each torque line of a fastener that could be read. */
export function jointFigures(thing: Thing, scope: Scope): JointFigures[] {
  const thread = threadOf(thing);
  const cls = classesOf(thing)[0];
  return torqueLines(thing).flatMap((line) => {
    const torque = stageTorques(line.spec).at(-1);
    if (!torque) return [];
    const check =
      thread && cls
        ? trade.checkJoint({ thread, class: cls, torqueNm: torque.highNm, lubrication: lubricationOf(thing) })
        : undefined;
    const wrench = trade.chooseWrench(torque.highNm, toolsIn(scope));
    return [
      { torqueNm: torque.highNm, check, shareOfNut: check && cls && shareOfNut(check, cls, thread), wrench },
    ];
  });
}

function shareOfNut(
  { preloadN }: trade.JointCheck,
  cls: trade.StrengthClass,
  thread: trade.Thread | undefined,
): number | undefined {
  const proofMPa = cls.kind === 'nut' && thread ? trade.nutProofMPa(cls.code, thread.diameterMm) : undefined;
  const area = thread?.stressAreaMm2;
  return proofMPa === undefined || area === undefined ? undefined : preloadN / (proofMPa * area);
}

/** The torque that an entry's line of clauses states. */
export function torqueOf(line: Line): Clause | undefined {
  return line.kind === 'clauses' ? line.clauses.find((clause) => clause.word === 'torque') : undefined;
}

/** The figures of one torque of the document, by its place; undefined where it belongs to no fastener of it. */
export function figuresAt(snapshot: Snapshot, scope: Scope, torque: Clause): JointFigures | undefined {
  const entry = pathAt(snapshot.tree, torque.start).find((line) => line.kind === 'entry');
  const thing = entry && scope.resolve(entry.head.text);
  if (!thing || thing.file !== snapshot.path) return undefined;
  const i = clausesOf(thing, 'torque').findIndex(({ clause }) => clause.start === torque.start);
  return jointFigures(thing, scope)[i];
}

/** The preload with the range that friction leaves it, and what a nut itself bears of it, for a card. */
export function preloadLine(figures: JointFigures, say: Texts): string | undefined {
  const { check, shareOfNut: ofNut } = figures;
  const words = inWords(figures, say);
  if (!check || words === undefined) return undefined;
  const [low, high] = check.preloadRangeN;
  const nut = ofNut === undefined ? '' : `, ${say.nutProof(Math.round(ofNut * 100))}`;
  return `${words} ${say.withFriction(kilonewtons(low), kilonewtons(high))}${nut}`;
}

/** `preload 63 kN, 74 % of proof`. */
export function inWords({ check }: JointFigures, say: Texts): string | undefined {
  return check && say.preload(kilonewtons(check.preloadN), Math.round(check.shareOfProof * 100));
}

function kilonewtons(newtons: number): string {
  const kn = newtons / 1000;
  return `${kn < 10 ? kn.toFixed(1) : Math.round(kn)} kN`;
}

/** Torque wrenches declared in the scope. */
function toolsIn(scope: Scope): trade.TorqueTool[] {
  return [...scope.names.values()].flatMap((tool) => {
    const measure = tool.kind === 'tool' ? torqueLines(tool)[0]?.spec?.stages[0]?.measure.measure : undefined;
    const { low, high } = measure ? toSI(measure) : {};
    return low && high ? [{ name: tool.name, lowNm: numberOf(low), highNm: numberOf(high) }] : [];
  });
}
