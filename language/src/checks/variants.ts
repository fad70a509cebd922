// V102 to V106: guards that mean nothing here, and values that some combination lacks or has twice.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import {
  guardNeverHolds,
  twoValues,
  unknownOption,
  unknownOptionValue,
  valueGap,
} from '../diagnostics/variants.js';
import { guardOfLine, guardsIn, type Job } from '../names/job.js';
import { clausesOf, type Thing, type ThingClause } from '../names/model.js';
import type { Guard, Line } from '../syntax/tree.js';
import { ALWAYS, type Condition, NEVER } from '../variants/diagrams.js';
import { ENTRY_CLAUSE_BY_WORD } from '../vocabulary/clauses.js';
import { nearestName } from '../vocabulary/near.js';
import { CARRIED_OUT, clauseCarriedOut } from './carried-out.js';
import type { Check } from './check.js';
import { nearFixes } from './near-fixes.js';
import { insertClause, workStatements } from './own-lines.js';

export const variants: Check = ({ job }) => [
  ...strangeGuards(job),
  ...emptyGuards(job),
  ...doubleValues(job),
  ...gaps(job),
];

/** Options and values that no vehicle of the job has. */
function strangeGuards({ file, scope, guardProblems }: Job): Finding[] {
  // Of a vehicle that is not known, its options are not known either.
  const isKnown = file.applies.every(
    ({ vehicle }) => !vehicle || scope.resolve(vehicle.text)?.kind === 'vehicle',
  );
  const seen = new Set<number>();
  return guardProblems.flatMap((problem) => {
    const { term } = problem;
    const isOption = problem.what === 'unknown option';
    const name = isOption ? term.option : term.values.find((value) => value.text === problem.written);
    if (isOption && !isKnown) return [];
    if (problem.what === 'never' || !name || seen.has(name.start) || problem.file !== file.path) return [];
    seen.add(name.start);
    const at = {
      file: file.path,
      span: { start: name.start, end: name.end },
      fixes: nearFixes(file.path, [name], nearestName(problem.written, problem.known)),
    };
    if (isOption) return [finding(unknownOption, at, { option: problem.written, known: problem.known })];
    return [
      finding(unknownOptionValue, at, {
        option: term.option.text,
        value: problem.written,
        known: problem.known,
      }),
    ];
  });
}

/** Guards that hold on no combination, alone or inside the guards around them. */
function emptyGuards(job: Job): Finding[] {
  const {
    file,
    universe: { diagrams, domain },
  } = job;
  if (file.kind !== 'procedure' || guardsIn(file).length === 0) return [];
  const strange = new Set(
    job.guardProblems.filter((problem) => problem.what !== 'never').map((problem) => problem.term),
  );
  const found: Finding[] = [];
  const stack: { line: Line; outer: Condition }[] = [...file.lines]
    .reverse()
    .map((line) => ({ line, outer: domain }));
  for (let next = stack.pop(); next; next = stack.pop()) {
    const { line, outer } = next;
    const guard = guardOfLine(line);
    const inside =
      guard && !guard.terms.some((term) => strange.has(term)) ? diagrams.and(outer, job.where(guard)) : outer;
    if (guard && inside === NEVER && outer !== NEVER && !line.broken) {
      found.push(
        finding(
          guardNeverHolds,
          { file: file.path, span: guardSpan(guard) },
          { guard: file.tree.text.slice(guardSpan(guard).start, guard.end) },
        ),
      );
    }
    for (const child of [...line.children].reverse()) stack.push({ line: child, outer: inside });
  }
  return found;
}

/** The terms, without the `when` before them. */
function guardSpan(guard: Guard): { start: number; end: number } {
  return { start: guard.terms[0]?.start ?? guard.start, end: guard.end };
}

/** Clauses that say the same twice for one combination. A guarded value replaces an unguarded one, so those are right. */
function doubleValues(job: Job): Finding[] {
  const {
    file,
    universe: { diagrams, domain },
  } = job;
  return file.things.flatMap((thing) => {
    const twice = [...thing.clauses].filter(([word, list]) => list.length > 1 && hasOneValue(word));
    if (twice.length === 0) return [];
    const where = diagrams.and(domain, job.exists(thing));
    return twice.flatMap(([word, list]) => {
      for (const [i, again] of list.entries()) {
        const first = list
          .slice(0, i)
          .find(
            (other) =>
              (other.guard === undefined) === (again.guard === undefined) &&
              diagrams.and(where, diagrams.and(job.where(other.guard), job.where(again.guard))) !== NEVER,
          );
        if (!first || again.line.broken || first.line.broken) continue;
        const both = diagrams.and(job.where(first.guard), job.where(again.guard));
        const related = [
          {
            file: file.path,
            span: { start: first.clause.start, end: first.clause.end },
            message: 'said here first',
          },
        ];
        const span = { start: again.clause.start, end: again.clause.end };
        return [
          finding(
            twoValues,
            {
              file: file.path,
              span,
              related,
              variants: again.guard ? job.universe.words(diagrams.and(where, both)) : undefined,
            },
            { name: thing.name, word: saidAs(word) },
          ),
        ];
      }
      return [];
    });
  });
}

const ONE_OF_RAW: ReadonlySet<string> = new Set([
  'class',
  'grade',
  'layout',
  'order',
  'hexalobular',
  'of',
  'bare',
]);

function hasOneValue(word: string): boolean {
  return ONE_OF_RAW.has(word) || ENTRY_CLAUSE_BY_WORD.get(word)?.shape === 'spec';
}

/** Values that are all guarded, with a combination that none of them covers. */
function gaps(job: Job): Finding[] {
  const { file, universe } = job;
  if (file.kind !== 'procedure') return [];
  const { diagrams } = universe;
  const found: Finding[] = [];
  const needed = neededWhere(job);
  for (const thing of new Set([...file.things, ...[...needed.values()].map(({ thing: each }) => each)])) {
    for (const [word, list] of thing.clauses) {
      if (!hasOneValue(word) || list.some(({ guard }) => guard === undefined)) continue;
      const need = needed.get(keyOf(thing, word));
      // What is torqued or filled nowhere needs no value; other figures are needed wherever the thing is.
      if (!need && (CARRIED_OUT.has(word) || thing.file !== file.path)) continue;
      const covered = list.reduce<Condition>((all, { guard }) => diagrams.or(all, job.where(guard)), NEVER);
      const wanted = diagrams.and(diagrams.and(universe.domain, job.exists(thing)), need?.when ?? ALWAYS);
      const gap = diagrams.minus(wanted, covered);
      const at = thing.file === file.path ? list[0]?.clause : need?.at;
      if (gap === NEVER || !at) continue;
      found.push(report(job, thing, word, list, gap, at));
    }
  }
  return found;
}

function report(
  job: Job,
  thing: Thing,
  word: string,
  list: readonly ThingClause[],
  gap: Condition,
  at: { start: number; end: number },
): Finding {
  const { file, universe } = job;
  const words = universe.words(gap);
  const isOwn = thing.file === file.path;
  const related = isOwn
    ? []
    : list.slice(0, 1).map(({ clause }) => ({
        file: thing.file,
        span: { start: clause.start, end: clause.end },
        message: 'declared here',
      }));
  const isGuard = words !== undefined && !words.includes(';') && !/\d+ or \d/.test(words);
  const clause = `${word === 'bare' ? '' : `${word} `}?, when ${words}`;
  const fixes: Fix[] =
    isOwn && isGuard && thing.line && word !== 'of'
      ? [{ title: `Leave it open there: \`${clause}\``, edits: [insertClause(job, thing.line, clause)] }]
      : [];
  return finding(
    valueGap,
    { file: file.path, span: { start: at.start, end: at.end }, related, fixes, variants: words },
    { name: thing.name, word: saidAs(word) },
  );
}

/** A value that statements carry out, with where they do. */
interface Needed {
  readonly thing: Thing;
  readonly when: Condition;
  readonly at: { readonly start: number; readonly end: number };
}

const keyOf = (thing: Thing, word: string): string => `${word} ${thing.id}`;

/** The values that statements carry out, of those that are all guarded. */
function neededWhere(job: Job): ReadonlyMap<string, Needed> {
  const { diagrams } = job.universe;
  const needed = new Map<string, Needed>();
  for (const { statement, when } of workStatements(job)) {
    if (statement.clause('bare')) continue;
    for (const { thing, item } of statement.objects) {
      const word = thing && clauseCarriedOut(statement, thing);
      if (!thing || word === undefined) continue;
      const list = clausesOf(thing, word);
      if (list.length === 0 || list.some(({ guard }) => guard === undefined)) continue;
      const key = keyOf(thing, word);
      const known = needed.get(key);
      needed.set(key, {
        thing,
        when: known ? diagrams.or(known.when, when) : when,
        at: known?.at ?? item.name,
      });
    }
  }
  return needed;
}

/** A clause in the words of a message. */
function saidAs(word: string): string {
  return word === 'bare' ? 'figure' : word === 'of' ? 'number and thread' : word;
}
