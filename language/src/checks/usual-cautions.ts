// H201, H202: a usual caution that is missing where verbs, marks or fluids call for it; once for each job and hazard.
import { type Finding, finding } from '../diagnostics/define.js';
import { usualWarningMissing } from '../diagnostics/h201-usual-warning-missing.js';
import { usualCautionMissing } from '../diagnostics/h202-usual-caution-missing.js';
import { allThings, type Job } from '../names/job.js';
import { hasClause, type Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import { once } from '../text/once.js';
import type { FluidFamily } from '../trade/grade-reading.js';
import { hasWord } from '../vocabulary/hazard-words.js';
import { HAZARDS, type Hazard, type HazardTrigger } from '../vocabulary/hazards.js';
import type { Check } from './check.js';
import { gradesOf } from './fluid-grades.js';
import { messagesOf } from './messages.js';
import { insertBefore, statementsOf, type WorkStatement, workStatements } from './own-lines.js';

export const usualCautions: Check = ({ job, library }) => {
  const language = library.settings.languages[0] ?? 'en';
  const statements = workStatements(job);
  /** The first line that has the hazard. */
  const firstAt = ({ triggers }: Hazard): WorkStatement | undefined => {
    let first: WorkStatement | undefined;
    for (const trigger of triggers) {
      if (!mayTrigger(job, trigger)) continue;
      const asked = statementsOf(job, ({ word }) => trigger.verbs?.includes(word) ?? true);
      const at = asked.find((w) => triggered(job, w, trigger, statements));
      if (at && (!first || at.line.start < first.line.start)) first = at;
    }
    return first;
  };
  return HAZARDS.flatMap((hazard) => {
    const at = firstAt(hazard);
    if (!at || isAnswered(job, hazard, at.line.start)) return [];
    const text = hazard.text[language];
    const edits = [insertBefore(job, at.line, [`${hazard.signal}: ${text}`])];
    const def = hazard.grave ? usualWarningMissing : usualCautionMissing;
    const fixes = [
      {
        title: `Insert the usual \`${hazard.signal}\` (common practice; check it against local codes and the maker's data)`,
        edits,
      },
    ];
    return [
      finding(
        def,
        { file: job.file.path, span: at.line.code, fixes },
        { hazard: hazard.title, signal: hazard.signal, text },
      ),
    ];
  }) satisfies Finding[];
};

/** The statements of a job that call for the usual caution of a hazard. */
export function calledFor(job: Job, hazard: Hazard): WorkStatement[] {
  const statements = workStatements(job);
  return statements.filter((w) => hazard.triggers.some((t) => triggered(job, w, t, statements)));
}

/**
 * A message before the action, or a prerequisite, that names the hazard or takes it away. What kills is told at the work:
 * who may do it is not yet a warning.
 */
function isAnswered(job: Job, hazard: Hazard, before: number): boolean {
  const messages = messagesOf(job)
    .filter((m) => m.line.start < before)
    .map((m) => m.text);
  const prerequisites =
    hazard.signal === 'danger'
      ? []
      : job.file.prerequisites.map(
          (l) => `${job.file.tree.text.slice(l.code.start, l.code.end)} ${l.prose?.text ?? ''}`,
        );
  return [...messages, ...prerequisites].some((text) => hasWord(text, hazard.answered));
}

/** Most hazards hang on a mark or a fluid that most jobs do not have. */
function mayTrigger(job: Job, { marks, supplies, families, fillerOf }: HazardTrigger): boolean {
  const has = whatIsIn(job);
  return (
    (!marks || marks.some((mark) => has.marks.has(mark))) &&
    (!supplies || supplies.some((mark) => has.marks.has(mark))) &&
    (!families || families.some((family) => has.families.has(family))) &&
    (!fillerOf || fillerOf.some((family) => has.families.has(family)))
  );
}

/** All marks of the things of a job, and the families of its fluids. */
const whatIsIn = once((job: Job) => {
  const marks = new Set<string>();
  const families = new Set<FluidFamily>();
  for (const thing of allThings(job.scopes)) {
    for (const mark of thing.marks) marks.add(mark);
    for (const { reading } of gradesOf(thing)) if (reading.family !== undefined) families.add(reading.family);
  }
  return { marks, families };
});

function triggered(
  job: Job,
  work: WorkStatement,
  trigger: HazardTrigger,
  all: readonly WorkStatement[],
): boolean {
  const { statement } = work;
  if (trigger.verbs && !trigger.verbs.includes(statement.verb.word)) return false;
  if (trigger.engineRuns && !isRunning(work, all)) return false;
  if (trigger.supplies) return takesSupply(job, statement, trigger.supplies);
  for (const { thing } of statement.objects)
    if (thing !== undefined && concerns(job, thing, trigger)) return true;
  return false;
}

/** Whether a line above in the same step starts an engine. */
function isRunning(work: WorkStatement, all: readonly WorkStatement[]): boolean {
  return all.some(
    (w) =>
      w.step === work.step &&
      w.line.start < work.line.start &&
      w.statement.verb.on.machine?.makes.includes('fluids moved'),
  );
}

/** Whether a supply with one of the marks is the object of the line or named in its clauses. */
function takesSupply(job: Job, statement: BoundStatement, marks: readonly string[]): boolean {
  const isMeant = (t: Thing | undefined): boolean => t?.kind === 'supply' && isMarked(t, marks);
  return (
    statement.objects.some((o) => isMeant(o.thing)) ||
    statement.clauses.some((c) => c.items.some((i) => isMeant(job.scope.resolve(i.name.text))))
  );
}

function concerns(job: Job, thing: Thing, trigger: HazardTrigger): boolean {
  const { marks, families, machines, fillerOf } = trigger;
  if (machines) return thing.kind === 'machine' && machines.includes(thing.name);
  if (trigger.names && !namePattern(trigger).test(thing.name)) return false;
  const inside = marks || families ? opened(job, thing) : NONE;
  if (marks && !isMarked(thing, marks) && !inside.some((t) => isMarked(t, marks))) return false;
  if (families && !isOf(thing, families) && !inside.some((t) => isOf(t, families))) return false;
  return !fillerOf || job.inverse(thing, 'fill at').some((r) => isOf(r.of, fillerOf));
}

/** Names that are one of the trigger's, or begin or end with one as a word. */
const namePattern = once(({ names = [] }: HazardTrigger): RegExp => {
  const any = `(?:${names.join('|')})`;
  return new RegExp(`^${any}(?:-|$)|-${any}$`);
});

/** The circuit a connection belongs to, and the fluids in it. */
function opened(job: Job, thing: Thing): readonly Thing[] {
  if (thing.kind !== 'circuit' && !hasClause(thing, 'in')) return NONE;
  const circuits =
    thing.kind === 'circuit'
      ? [thing]
      : job
          .relations(thing, 'in')
          .map((r) => r.target)
          .filter((t) => t.kind === 'circuit');
  return [...circuits, ...circuits.flatMap((c) => job.relations(c, 'uses').map((r) => r.target))];
}

const NONE: readonly Thing[] = [];

function isMarked({ marks }: Thing, wanted: readonly string[]): boolean {
  return marks.some((mark) => wanted.includes(mark));
}

/** Whether a thing is a fluid of one of the families. */
function isOf(thing: Thing, families: readonly FluidFamily[]): boolean {
  return gradesOf(thing).some(({ reading: { family } }) => family !== undefined && families.includes(family));
}
