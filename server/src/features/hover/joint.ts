// What a torque does to its joint: clamp force, share of proof, the wrench to take. For hovers and inlay hints.
import {
  classesOf,
  lubricationOf,
  numberOf,
  type Scope,
  stageTorques,
  type Thing,
  threadOf,
  torqueLines,
  toSI,
  trade,
} from '@baywright/language';

export interface JointFigures {
  readonly torqueNm: number;
  readonly check: trade.JointCheck | undefined;
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
    return [{ torqueNm: torque.highNm, check, wrench: trade.chooseWrench(torque.highNm, toolsIn(scope)) }];
  });
}

/** `preload 63 kN, 74 % of proof`. */
export function inWords({ check }: JointFigures): string | undefined {
  return (
    check && `preload ${kilonewtons(check.preloadN)}, ${Math.round(check.shareOfProof * 100)} % of proof`
  );
}

export function kilonewtons(newtons: number): string {
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
