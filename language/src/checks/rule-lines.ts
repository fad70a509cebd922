// S405: house rules of the file that are not whole, or name a thing or a state that is not there.
import { type Finding, finding } from '../diagnostics/define.js';
import { ruleUnreadable } from '../diagnostics/s405-rule-unreadable.js';
import { isDraft } from '../names/draft.js';
import { everyLine, type Job } from '../names/job.js';
import { nameSpan, type Thing } from '../names/model.js';
import { readRule } from '../rules/rule-model.js';
import { stateTest, stateWords } from '../rules/state-words.js';
import type { EventPattern, Name, RuleClause, RuleLine, StatePattern } from '../syntax/tree.js';
import { nearestName, nearestWord } from '../vocabulary/near.js';
import type { Check } from './check.js';
import { nearFixes } from './near-fixes.js';

export const ruleLines: Check = ({ job, syntax }) =>
  job.file.things
    .filter((thing) => thing.kind === 'rule')
    .flatMap((rule) => {
      const { line } = rule;
      if (!line || syntax.some((f) => f.span.start >= line.start && f.span.start <= line.end)) return [];
      const clauses = [...everyLine(line.children)]
        .filter((l): l is RuleLine => l.kind === 'rule')
        .flatMap((l) => l.clauses);
      const name = nameSpan(rule);
      const what = readRule(rule, false) ? undefined : missingPart(clauses);
      if (name && what) {
        const found = report(job, rule, name, what, []);
        // What stands there is right as far as it goes: in a draft the rest is still to be written.
        return [isBegun(clauses) && isDraft(job.file) ? { ...found, severity: 'question' } : found];
      }
      return clauses.flatMap((clause) => clauseFaults(job, rule, clause));
    });

const HEADS: ReadonlySet<string> = new Set(['after', 'before', 'never', 'every']);

const isBegun = ([head]: readonly RuleClause[]): boolean => head === undefined || HEADS.has(head.word);

function missingPart([head, ...tail]: readonly RuleClause[]): string {
  switch (head?.word) {
    case 'after':
    case 'before':
      return tail.some((c) => c.word === 'require')
        ? 'no time says how long to wait'
        : 'no `require` says what it asks for';
    case 'never':
      return 'no `while` says when';
    case 'every':
      return 'neither `needs` nor `at most once` follows';
    case undefined:
      return 'nothing stands below its title';
    default:
      return 'it does not begin with `after`, `before`, `never` or `every`';
  }
}

function clauseFaults(job: Job, rule: Thing, clause: RuleClause): Finding[] {
  if (clause.word === 'while') return clause.state ? stateFaults(job, rule, clause.state) : [];
  if (clause.word === 'needs') return nameFaults(job, rule, clause.clause?.items.map((i) => i.name) ?? []);
  if (!('pattern' in clause) || !clause.pattern) return [];
  return nameFaults(job, rule, namesOf(clause.pattern));
}

function namesOf({ target, clauses }: EventPattern): Name[] {
  const targets = target?.form === 'names' ? target.names : [];
  return [...targets, ...clauses.flatMap((c) => c.items.map((i) => i.name))];
}

/** In a catalogue a rule may name what only some procedures declare. */
function nameFaults(job: Job, rule: Thing, names: readonly Name[]): Finding[] {
  if (job.file.kind !== 'procedure' || job.scope.missing.length > 0) return [];
  return names
    .filter((n) => !job.scope.resolve(n.text))
    .map((n) =>
      report(job, rule, n, `no thing is called \`${n.text}\``, nearestName(n.text, job.scope.names.keys())),
    );
}

function stateFaults(job: Job, rule: Thing, { target, state }: StatePattern): Finding[] {
  if (target.form !== 'names') return [];
  const missing = nameFaults(job, rule, target.names);
  if (missing.length > 0) return missing;
  return target.names.flatMap((n) => {
    const thing = job.scope.resolve(n.text);
    if (!thing || stateTest(thing, state.text)) return [];
    const words = [...stateWords(thing.kind), ...thing.values.map((v) => v.text)];
    return [
      report(job, rule, state, `\`${n.text}\` is never \`${state.text}\``, nearestWord(state.text, words)),
    ];
  });
}

function report(
  job: Job,
  rule: Thing,
  { start, end }: { readonly start: number; readonly end: number },
  what: string,
  near: readonly string[],
): Finding {
  const file = job.file.path;
  const span = { start, end };
  return finding(
    ruleUnreadable,
    { file, span, fixes: nearFixes(file, [span], near) },
    { rule: rule.name, what, near },
  );
}
