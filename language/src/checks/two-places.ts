// Q118: a statement that gives a figure of its own where its thing declares another.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { twoPlaces } from '../diagnostics/quantities.js';
import { isEndOfDraft, isWithoutEnd } from '../names/draft.js';
import type { Job } from '../names/job.js';
import { clausesOf, type Thing, type ThingClause } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import { formatSpec, numberOf, type Rational, type Spec, toSI } from '../quantity/index.js';
import type { Clause, SpecNode } from '../syntax/tree.js';
import { NEVER } from '../variants/diagrams.js';
import { clauseCarriedOut } from './carried-out.js';
import type { Check } from './check.js';
import { statementsWith, workStatements } from './own-lines.js';
import { wordsOnBrokenLines } from './undeclared.js';

export const twoPlacesAgree: Check = ({ job }) => {
  const { file, universe } = job;
  const found: Finding[] = [];
  for (const { statement, when, line } of statementsWith(job, 'bare')) {
    const own = statement.clause('bare');
    // With an end mark the mark decides, and the figure is what to have at hand.
    if (!own?.spec || statement.clause('stage') || statement.clause('until level at')) continue;
    for (const { thing } of statement.objects) {
      const word = thing && clauseCarriedOut(statement, thing);
      if (!thing || word === undefined) continue;
      const declared = clausesOf(thing, word).filter(
        ({ clause, guard }) =>
          clause.spec &&
          universe.diagrams.and(universe.diagrams.and(when, universe.condition(guard)), universe.domain) !==
            NEVER,
      );
      const specs = declared.map(({ clause }) => meantBy(clause.spec)).filter((each) => each !== undefined);
      const here = meantBy(own.spec);
      const [first] = specs;
      if (!here || !first || specs.length < declared.length || specs.some((each) => same(each, here)))
        continue;
      const isPart = statement.verb.on.fluid?.makes.includes('filled') && specs.every((s) => less(here, s));
      if (isPart && wordsOnBrokenLines(file.lines).has(thing.name)) continue;
      if (
        isPart &&
        workStatements(job).some((later) => later.line.start > line.start && addsTo(later.statement, thing))
      )
        continue;
      const leave = leaveOut(job, statement, own);
      const told = report(job.file.path, file.tree.text, own, leave, thing, word, here, first, declared[0]);
      // The rest may well go in further down.
      const isOpen = isPart && (isWithoutEnd(file) || isEndOfDraft(file, line));
      found.push(isOpen ? { ...told, severity: 'question' } : told);
    }
  }
  return found;
};

/** Takes the bare figure of a line out: its entry says it. */
export function leaveOut({ file: { path, tree } }: Job, { line }: BoundStatement, own: Clause): Fix {
  const next = line.clauses.find((clause) => clause.start >= own.end);
  // The comma before the figure goes with it, and the one behind it too where names follow: `fill oil with funnel`.
  const before = /,?\s*$/.exec(tree.text.slice(0, own.start))?.[0].length ?? 0;
  const behind =
    next && next.items.length > 0 ? (/^\s*,/.exec(tree.text.slice(own.end))?.[0].length ?? 0) : 0;
  return {
    title: 'Leave the figure out here',
    edits: [{ file: path, span: { start: own.start - before, end: own.end + behind }, text: '' }],
  };
}

function report(
  file: string,
  text: string,
  own: Clause,
  leave: Fix,
  thing: Thing,
  word: string,
  here: Spec,
  declared: Spec,
  at: ThingClause | undefined,
): Finding {
  const span = { start: own.start, end: own.end };
  const written = text.slice(own.start, own.end);
  const place = at?.clause.spec;
  const isHere = thing.file === file && place !== undefined;
  const correct = isHere
    ? [
        {
          title: `Write ${written} in the entry of \`${thing.name}\``,
          edits: [{ file, span: { start: place.start, end: place.end }, text: written }],
        },
      ]
    : [];
  const related = place
    ? [{ file: thing.file, span: { start: place.start, end: place.end }, message: 'declared here' }]
    : [];
  return finding(
    twoPlaces,
    { file, span, related, fixes: [leave, ...correct] },
    {
      name: thing.name,
      word,
      here: written,
      declared: formatSpec(declared),
      sameNumber: sameNumber(here, declared),
    },
  );
}

/** Whether a line puts more of a fluid in, or of a name misspelt: a gearbox takes a part of its oil standing still, the rest when it has run. */
function addsTo({ verb, objects }: BoundStatement, fluid: Thing): boolean {
  const makes = verb.on.fluid?.makes ?? [];
  return (
    (makes.includes('filled') || makes.includes('topped')) &&
    objects.some(({ thing }) => thing === undefined || thing === fluid)
  );
}

/** Whether one amount is less than another of its kind. */
function less(a: Spec, b: Spec): boolean {
  const [one, other] = [a.stages[0]?.measure, b.stages[0]?.measure];
  if (!one || one.unit.kind !== other?.unit.kind) return false;
  const [most, least] = [toSI(one), toSI(other)];
  const [high, low] = [most.nominal ?? most.high, least.nominal ?? least.low];
  return high !== undefined && low !== undefined && high.compare(low) < 0;
}

/** The stages of a written specification; undefined while a part of it is not understood. */
function meantBy(node: SpecNode | undefined): Spec | undefined {
  const stages =
    node?.stages.map(({ back, measure }) =>
      measure.measure ? { back, measure: measure.measure } : undefined,
    ) ?? [];
  return stages.length > 0 && stages.every((stage) => stage !== undefined) ? { stages } : undefined;
}

/** The same stages, written in whatever unit: within half a per cent, so that a rounded conversion is no quarrel. */
function same(a: Spec, b: Spec): boolean {
  return (
    a.stages.length === b.stages.length &&
    a.stages.every(({ back, measure }, i) => {
      const other = b.stages[i];
      if (!other || other.back !== back || other.measure.unit.kind !== measure.unit.kind) return false;
      const [one, two] = [toSI(measure), toSI(other.measure)];
      return (
        near(one.nominal ?? one.low, two.nominal ?? two.low) &&
        near(one.nominal ?? one.high, two.nominal ?? two.high)
      );
    })
  );
}

function near(a: Rational | undefined, b: Rational | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  return (
    Math.abs(numberOf(a) - numberOf(b)) <= 0.005 * Math.max(Math.abs(numberOf(a)), Math.abs(numberOf(b)))
  );
}

function sameNumber(a: Spec, b: Spec): boolean {
  const [one] = a.stages;
  const [two] = b.stages;
  if (one?.measure.form !== 'amount' || two?.measure.form !== 'amount') return false;
  return one.measure.value.compare(two.measure.value) === 0 && one.measure.unit !== two.measure.unit;
}
