// L101 to L103, L201, L202: grades by their standards, and what may meet in one system.
import { type Finding, finding } from '../diagnostics/define.js';
import { gradeUnknown } from '../diagnostics/l101-grade-unknown.js';
import { gradesDisagree } from '../diagnostics/l102-grades-disagree.js';
import { gradeWithdrawn } from '../diagnostics/l103-grade-withdrawn.js';
import { mustNotMix } from '../diagnostics/l201-must-not-mix.js';
import { mixingAsked } from '../diagnostics/l202-mixing-asked.js';
import type { Job, Relation } from '../names/job.js';
import { clausesOf, type Thing, type ThingClause } from '../names/model.js';
import { once } from '../text/once.js';
import type { Span } from '../text/span.js';
import { GRADE_STANDARDS, type GradeReading } from '../trade/grade-reading.js';
import { readGrade } from '../trade/grades.js';
import { type Mixing, mayMix, suits } from '../trade/mixing.js';
import { NEVER } from '../variants/diagrams.js';
import type { Check } from './check.js';
import { workStatements } from './own-lines.js';

export const fluidGrades: Check = ({ job }) => {
  const graded = job.file.things.filter((t) => t.kind === 'fluid' || t.kind === 'supply');
  return [
    ...graded.flatMap((thing) => [
      ...unknownGrades(job, thing),
      ...disagreeing(job, thing),
      ...withdrawnGrades(job, thing),
    ]),
    ...poured(job),
    ...job.file.things.filter((t) => t.kind === 'circuit').flatMap((t) => sharedCircuit(job, t)),
  ];
};

interface Graded {
  readonly reading: GradeReading;
  readonly at: ThingClause;
}

/** Every grade of a fluid or supply, read by its standard; holes are passed over. */
export const gradesOf = once((thing: Thing): readonly Graded[] =>
  GRADE_STANDARDS.flatMap((standard) =>
    clausesOf(thing, standard).flatMap((at) => {
      const { raw } = at.clause;
      return raw && !raw.hole && raw.text !== '' ? [{ reading: readGrade(standard, raw.text), at }] : [];
    }),
  ),
);

function unknownGrades(job: Job, thing: Thing): Finding[] {
  const file = job.file.path;
  return gradesOf(thing).flatMap(({ reading, at }) => {
    const { raw } = at.clause;
    if (reading.ok || !raw) return [];
    const { fix, source } = reading;
    const text = fix?.replace(new RegExp(`^${at.clause.word} `), '');
    const fixes =
      text === undefined
        ? []
        : [
            {
              title: `Write \`${fix}\``,
              // Not to be done unasked: GL-9 may have been GL-4 or GL-5.
              edits: [{ file, span: { start: raw.start, end: raw.end }, text }],
            },
          ];
    return [
      finding(
        gradeUnknown,
        { file, span: raw, fixes },
        { problem: reading.problem ?? `${reading.printed} is not known`, source, fix },
      ),
    ];
  });
}

/** Of what is bought: a vehicle's own fluid keeps the grade of its maker's sheet. */
function withdrawnGrades(job: Job, thing: Thing): Finding[] {
  if (thing.kind !== 'supply') return [];
  return gradesOf(thing).flatMap(({ reading, at }) => {
    const { raw } = at.clause;
    if (!reading.ok || reading.withdrawn === undefined || !raw) return [];
    const data = { grade: `${reading.standard} ${reading.withdrawn}`, source: reading.source };
    return [finding(gradeWithdrawn, { file: job.file.path, span: raw }, data)];
  });
}

/** Two grades of one entry that hold on the same vehicles and belong to different families. */
function disagreeing(job: Job, thing: Thing): Finding[] {
  const known = gradesOf(thing).filter((g) => g.reading.ok);
  for (const [i, b] of known.entries()) {
    for (const a of known.slice(0, i)) {
      if (!together(job, a.at, b.at)) continue;
      const mixing = mayMix(a.reading, b.reading);
      if (mixing.answer !== 'no' || a.reading.standard === b.reading.standard) continue;
      const [first, second] = a.at.clause.start < b.at.clause.start ? [a, b] : [b, a];
      return [
        finding(
          gradesDisagree,
          { file: job.file.path, span: second.at.clause },
          { name: thing.name, reason: mayMix(first.reading, second.reading).reason },
        ),
      ];
    }
  }
  return [];
}

function together(job: Job, a: ThingClause, b: ThingClause): boolean {
  // A catalogue does not know which vehicles it is read for: lines with guards of their own are taken as apart.
  if (job.file.kind !== 'procedure') return !a.guard && !b.guard;
  return job.universe.diagrams.and(job.where(a.guard), job.where(b.guard)) !== NEVER;
}

/** `fill brake-fluid from fluid-can`: the can against the system. */
function poured(job: Job): Finding[] {
  return workStatements(job).flatMap(({ statement }) => {
    const fluid = statement.objects.find((o) => o.thing?.kind === 'fluid')?.thing;
    if (!fluid || !statement.verb.on.fluid?.makes.some((m) => m === 'filled' || m === 'topped')) return [];
    return [...statement.named('from'), ...statement.named('with')].flatMap(({ thing, item }) =>
      thing?.kind === 'supply' ? verdict(job, worst(fluid, thing, suits), item.name) : [],
    );
  });
}

/** A circuit that uses two fluids at once. */
function sharedCircuit(job: Job, circuit: Thing): Finding[] {
  const uses: readonly Relation[] = job.relations(circuit, 'uses');
  for (const [i, b] of uses.entries()) {
    for (const a of uses.slice(0, i)) {
      if (a.target === b.target || job.universe.diagrams.and(a.when, b.when) === NEVER) continue;
      const found = verdict(job, worst(a.target, b.target, mayMix), b.item.name);
      if (found.length > 0) return found;
    }
  }
  return [];
}

/** The gravest answer over all pairs of grades; undefined when either has none that could be read. */
function worst(
  system: Thing,
  fluid: Thing,
  judge: (a: GradeReading, b: GradeReading) => Mixing,
): Mixing | undefined {
  const readings = (t: Thing) =>
    gradesOf(t)
      .map((g) => g.reading)
      .filter((r) => r.ok);
  const answers = readings(system).flatMap((a) => readings(fluid).map((b) => judge(a, b)));
  return answers.find((m) => m.answer === 'no') ?? answers.find((m) => m.answer === 'ask');
}

function verdict(job: Job, mixing: Mixing | undefined, span: Span): Finding[] {
  if (!mixing) return [];
  const at = { file: job.file.path, span: { start: span.start, end: span.end } };
  const data = { reason: mixing.reason, source: mixing.source };
  return [mixing.answer === 'no' ? finding(mustNotMix, at, data) : finding(mixingAsked, at, data)];
}
