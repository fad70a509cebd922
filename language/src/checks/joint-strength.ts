// F201 to F203, F210, F213: what a torque does to its bolt.
import { type Finding, finding } from '../diagnostics/define.js';
import { type JointWords, overYield } from '../diagnostics/f201-over-yield.js';
import { inchFootExchanged } from '../diagnostics/f202-inch-foot-exchanged.js';
import { torqueLow } from '../diagnostics/f203-torque-low.js';
import { angleWithoutSnug } from '../diagnostics/f210-angle-without-snug.js';
import { stretchNotRenewed } from '../diagnostics/f213-stretch-not-renewed.js';
import { torqueLines } from '../names/figures.js';
import type { Job } from '../names/job.js';
import { hasClause, type Thing } from '../names/model.js';
import { implausible, numberOf, type QuantityUse } from '../quantity/index.js';
import type { SpecNode } from '../syntax/tree.js';
import {
  angleStretch,
  checkJoint,
  checkUnclassed,
  type JointCheck,
  type JointInput,
} from '../trade/joint.js';
import type { Thread } from '../trade/thread.js';
import type { Check } from './check.js';
import {
  angleDegrees,
  asksForTorque,
  classesOf,
  lubricationOf,
  millimetres,
  type StageTorque,
  stageTorques,
  threadOf,
  torqueUse,
} from './fastener-facts.js';
import { workStatements } from './own-lines.js';

/** Unit ids the joint check can tell inch and foot by. */
const INCH_FOOT: Readonly<Record<string, NonNullable<JointInput['writtenUnit']>>> = {
  'N-m': 'N·m',
  'ft-lbf': 'ft·lbf',
  'in-lbf': 'in·lbf',
};

/** The turn from which a set counts as stretched for good when its clamped length is not known, degrees; common practice. */
const STRETCH_DEGREES = 60;

export const jointStrength: Check = ({ job }) => {
  const declared = job.file.things
    .filter((t) => t.kind === 'fastener')
    .flatMap((thing) => declaredFindings(job, thing));
  const written = workStatements(job).flatMap(({ statement }) => {
    const spec = asksForTorque(statement.verb) ? statement.clause('bare')?.spec : undefined;
    if (!spec) return [];
    // Where the set declares a torque, a line that says another is a finding of its own.
    const judged = statement.objects.filter(
      (o) => !o.thing || statement.clause('stage') || !hasClause(o.thing, 'torque'),
    );
    return judged.flatMap((o) => (o.thing?.kind === 'fastener' ? specFindings(job, o.thing, spec) : []));
  });
  return [...declared, ...written];
};

/** What was found of an entry, and what its torque was for then: the rest is in the entry alone. */
const known = new WeakMap<Thing, { readonly use: QuantityUse; readonly findings: readonly Finding[] }>();

function declaredFindings(job: Job, thing: Thing): readonly Finding[] {
  const use = torqueUse(job, thing);
  const before = known.get(thing);
  if (before?.use === use) return before.findings;
  const findings = torqueLines(thing).flatMap((line) => specFindings(job, thing, line.spec));
  known.set(thing, { use, findings });
  return findings;
}

/** What a torque does to the bolts of a set: at most one finding for each written spec. */
export function specFindings(job: Job, thing: Thing, spec: SpecNode | undefined): Finding[] {
  if (!spec) return [];
  const { path: file, tree } = job.file;
  const first = spec.stages[0];
  const angle = angleDegrees(spec);
  const torques = stageTorques(spec);
  if (first && first.measure.measure?.unit.kind === 'angle' && !first.back && torques.length === 0) {
    const words = tree.text.slice(first.measure.start, first.measure.end);
    return [finding(angleWithoutSnug, { file, span: first.measure }, { angle: words, name: thing.name })];
  }
  const thread = threadOf(thing);
  if (!thread) return [];
  for (const torque of torques) {
    const found = judged(job, thing, thread, torque);
    if (found) return [found];
  }
  return stretchFindings(job, thing, thread, spec, angle, torques);
}

/** One torque against the bolt: every class that the entry names must agree before anything is said. */
function judged(job: Job, thing: Thing, thread: Thread, torque: StageTorque): Finding | undefined {
  // A value outside every plausible band is reported as such, once.
  if (torque.at.measure && implausible(torque.at.measure, torqueUse(job, thing))) return undefined;
  const classes = classesOf(thing);
  const lubrication = lubricationOf(thing);
  const writtenUnit = INCH_FOOT[torque.unit.id];
  const check = (torqueNm: number) =>
    classes.map((cls) => checkJoint({ thread, class: cls, torqueNm, lubrication, writtenUnit }));
  const words = new JointTexts(job, thread, torque);
  if (classes.length === 0) return unclassed(job, thing, thread, torque, words);
  const high = check(torque.highNm);
  const worst = high[0];
  if (worst && high.every((c) => c?.verdict === 'inch-foot-exchanged') && worst.meantUnit)
    return words.exchanged(worst, classes[0]?.printed ?? '', worst.meantUnit);
  if (worst && high.every((c) => c?.verdict === 'yields' || c?.verdict === 'inch-foot-exchanged'))
    return words.yields(worst, classes[0]?.printed ?? '');
  const low = !torque.last ? [] : torque.lowNm === torque.highNm ? high : check(torque.lowNm);
  if (low[0] && low.every((c) => c?.verdict === 'low')) {
    const { meantUnit } = low[0];
    const cls = classes[0]?.printed ?? '';
    return meantUnit && low.every((c) => c?.meantUnit === meantUnit)
      ? words.exchanged(low[0], cls, meantUnit)
      : words.low(low[0], cls);
  }
  return undefined;
}

function unclassed(
  job: Job,
  thing: Thing,
  thread: Thread,
  torque: StageTorque,
  words: JointTexts,
): Finding | undefined {
  const wheel = torqueUse(job, thing) === 'wheel-nut torque' ? 'wheel' : undefined;
  const high = checkUnclassed(thread, torque.highNm);
  if (high?.verdict === 'yields') return words.yieldsAny(high.shareOfYield);
  const low = torque.last ? checkUnclassed(thread, torque.lowNm, wheel) : undefined;
  return low?.verdict === 'low' ? words.lowWheel(low.shareOfYield) : undefined;
}

/** Turns a verdict into its finding, in the unit that was written. */
class JointTexts {
  readonly #file: string;
  readonly #thread: Thread;
  readonly #torque: StageTorque;
  readonly #written: string;

  constructor(job: Job, thread: Thread, torque: StageTorque) {
    this.#file = job.file.path;
    this.#thread = thread;
    this.#torque = torque;
    this.#written = job.file.tree.text.slice(torque.at.start, torque.at.end);
  }

  yields(check: JointCheck, cls: string): Finding {
    return finding(overYield, this.#at(), this.#words(check, cls, check.shareOfYield));
  }

  exchanged(check: JointCheck, cls: string, meant: 'ft·lbf' | 'in·lbf'): Finding {
    const unit = this.#torque.at.amounts.at(-1)?.unit;
    const amount = this.#torque.at.amounts[0];
    const written = amount && unit ? this.#written.slice(0, unit.start - this.#torque.at.start).trim() : '';
    const fixes = unit
      ? [
          {
            title: `Write \`${meant}\``,
            edits: [{ file: this.#file, span: { start: unit.start, end: unit.end }, text: meant }],
          },
        ]
      : [];
    const low = check.verdict === 'low';
    const found = finding(
      inchFootExchanged,
      { ...this.#at(), fixes },
      {
        ...this.#words(check, cls, low ? check.shareOfProof : check.shareOfYield),
        meant: `${written} ${meant}`,
        low,
      },
    );
    // Too much breaks the bolt; as little as that is rare, and right for some.
    return low ? { ...found, severity: torqueLow.severity } : found;
  }

  low(check: JointCheck, cls: string): Finding {
    return finding(torqueLow, this.#at(), this.#words(check, cls, check.shareOfProof));
  }

  yieldsAny(share: number): Finding {
    return finding(
      overYield,
      this.#at(),
      this.#bare(`${this.#thread.designation} of even class 12.9`, share),
    );
  }

  lowWheel(share: number): Finding {
    return finding(torqueLow, this.#at(), this.#bare(`a wheel fastener ${this.#thread.designation}`, share));
  }

  #at() {
    return { file: this.#file, span: this.#torque.at };
  }

  #words(check: JointCheck, cls: string, share: number): JointWords {
    const { unit } = this.#torque;
    const chart = `${twoDigits(check.chartTorqueNm / numberOf(unit.factor))} ${unit.symbol}`;
    return {
      ...this.#bare(`${this.#thread.designation}, ${cls}`, share),
      chart,
      suggestion: check.suggestion,
      condition: check.condition,
    };
  }

  #bare(joint: string, share: number): JointWords {
    const percent = share < 0.1 ? Math.round(share * 1000) / 10 : Math.round(share * 100);
    return {
      torque: this.#written,
      joint,
      percent,
      chart: undefined,
      suggestion: undefined,
      condition: undefined,
    };
  }
}

function stretchFindings(
  job: Job,
  thing: Thing,
  thread: Thread,
  spec: SpecNode,
  angle: number,
  torques: readonly StageTorque[],
): Finding[] {
  const [torque] = torques;
  const [cls] = classesOf(thing);
  if (angle === 0 || !torque || !cls || hasClause(thing, 'renew')) return [];
  const grip = millimetres(thing, 'grip')?.mm;
  const stretch =
    grip === undefined
      ? undefined
      : angleStretch({
          thread,
          class: cls,
          torqueNm: torque.highNm,
          lubrication: lubricationOf(thing),
          angleDeg: angle,
          gripMm: grip,
        });
  if (stretch ? !stretch.pastYield : angle < STRETCH_DEGREES) return [];
  const data = {
    name: thing.name,
    angle: `${Math.round(angle)}°`,
    percent: stretch ? Math.round(stretch.shareOfYield * 100) : undefined,
  };
  return [finding(stretchNotRenewed, { file: job.file.path, span: spec }, data)];
}

function twoDigits(value: number): string {
  return String(Number(value.toPrecision(2)));
}
