// H201, H202: a usual caution that is missing where verbs, marks or fluids call for it; once for each job and hazard.
import { type Finding, finding } from '../diagnostics/define.js';
import { usualWarningMissing } from '../diagnostics/h201-usual-warning-missing.js';
import { usualCautionMissing } from '../diagnostics/h202-usual-caution-missing.js';
import type { Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import type { FluidFamily } from '../trade/grade-reading.js';
import { hasWord } from '../vocabulary/hazard-words.js';
import { HAZARDS, type Hazard, type HazardTrigger } from '../vocabulary/hazards.js';
import type { Check } from './check.js';
import { gradesOf } from './fluid-grades.js';
import { messagesOf } from './messages.js';
import { insertBefore, type WorkStatement, workStatements } from './own-lines.js';

export const usualCautions: Check = ({ job, library }) => {
  const language = library.settings.languages[0] ?? 'en';
  const statements = workStatements(job);
  const verbs = new Set(statements.map((w) => w.statement.verb.word));
  /** The first line that has the hazard. Most hazards hang on verbs that most jobs do not have. */
  const firstAt = ({ triggers }: Hazard): WorkStatement | undefined => {
    let first = statements.length;
    for (const trigger of triggers) {
      if (trigger.verbs && !trigger.verbs.some((verb) => verbs.has(verb))) continue;
      const at = statements.findIndex((w) => triggered(job, w, trigger, statements));
      if (at >= 0) first = Math.min(first, at);
    }
    return statements[first];
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

/** A message before the action, or a prerequisite, that names the hazard or takes it away. */
function isAnswered(job: Job, hazard: Hazard, before: number): boolean {
  const messages = messagesOf(job)
    .filter((m) => m.line.start < before)
    .map((m) => m.text);
  const prerequisites = job.file.prerequisites.map(
    (l) => `${job.file.tree.text.slice(l.code.start, l.code.end)} ${l.prose?.text ?? ''}`,
  );
  return [...messages, ...prerequisites].some((text) => hasWord(text, hazard.answered));
}

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
      w.statement.verb.on.machine?.makes.includes('moved_fluids'),
  );
}

/** Whether a supply with one of the marks is the object of the line or named in its clauses. */
function takesSupply(job: Job, statement: BoundStatement, marks: readonly string[]): boolean {
  const used = [
    ...statement.objects.map((o) => o.thing),
    ...statement.clauses.flatMap((c) => c.items.map((i) => job.scope.resolve(i.name.text))),
  ];
  return used.some((t) => t?.kind === 'supply' && t.marks.some((m) => marks.includes(m)));
}

function concerns(job: Job, thing: Thing, trigger: HazardTrigger): boolean {
  const { marks, names, families, machines, fillerOf } = trigger;
  if (machines) return thing.kind === 'machine' && machines.includes(thing.name);
  if (
    names &&
    !names.some((n) => thing.name === n || thing.name.startsWith(`${n}-`) || thing.name.endsWith(`-${n}`))
  )
    return false;
  const inside = marks || families ? [thing, ...opened(job, thing)] : [];
  if (marks && !inside.some((t) => t.marks.some((m) => marks.includes(m)))) return false;
  if (families && !inside.some((t) => familiesOf(t).some((f) => families.includes(f)))) return false;
  if (
    fillerOf &&
    !job.inverse(thing, 'fill at').some((r) => familiesOf(r.of).some((f) => fillerOf.includes(f)))
  )
    return false;
  return true;
}

/** The circuit a connection belongs to, and the fluids in it. */
function opened(job: Job, thing: Thing): Thing[] {
  const circuits =
    thing.kind === 'circuit'
      ? [thing]
      : job
          .relations(thing, 'in')
          .map((r) => r.target)
          .filter((t) => t.kind === 'circuit');
  return [...circuits, ...circuits.flatMap((c) => job.relations(c, 'uses').map((r) => r.target))];
}

function familiesOf(thing: Thing): FluidFamily[] {
  return gradesOf(thing)
    .map((g) => g.reading.family)
    .filter((f) => f !== undefined);
}
