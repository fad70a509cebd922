// House rules and usual practice, running along with the state on all combinations and paths.
import type { Finding } from '../diagnostics/define.js';
import { houseRule } from '../diagnostics/s403-house-rule.js';
import { usualPractice } from '../diagnostics/s404-usual-practice.js';
import { allThings, type Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { Machine } from '../state/machine.js';
import type { Listener } from '../state/run.js';
import { once } from '../text/once.js';
import { automatonOf } from './automaton.js';
import { applies, saysTheSame } from './bearing.js';
import { type Rule, readRule } from './rule-model.js';
import { starterRules } from './starter.js';
import { type Told, tellerOf } from './teller.js';

export interface RuleRun {
  readonly listen: (m: Machine) => readonly Listener[];
  /** What was broken, without what a state finding on the same things says better. `told` are the things of those. */
  findings(told: ReadonlySet<Thing>): readonly Finding[];
  /** The rules that bear on this job. */
  readonly rules: readonly Rule[];
}

/** `off` holds the names of starter rules that the house does without, or `all`. */
export function runRules(job: Job, off: ReadonlySet<string> = new Set()): RuleRun {
  const house = houseRules(job);
  const usual = off.has('all')
    ? []
    : starterRules().filter((r) => !off.has(r.thing.name) && !house.some((h) => saidBy(h).has(r)));
  const things = allThings(job.scopes);
  const rules = [...house, ...usual].filter((r) => applies(r, job, things));
  const found: Told[] = [];
  return {
    rules,
    findings: (told) =>
      withoutTwins(found.filter((b) => !saidBetter(b, told)).flatMap((b) => b.finding() ?? [])),
    listen: (m) => rules.map((rule) => automatonOf(m, rule, tellerOf(m, rule, found))),
  };
}

/** The rules that the job's own file and the files it uses declare. */
export function houseRules(job: Job): Rule[] {
  return [...job.scope.names.values()]
    .filter((t) => t.kind === 'rule')
    .map(ruleOf)
    .filter((r) => r !== undefined);
}

/** A catalogue's rules are read once for all procedures that use it, and held against usual practice once. */
const ruleOf = once((thing: Thing) => readRule(thing, false));
const saidBy = once(
  (house: Rule): ReadonlySet<Rule> => new Set(starterRules().filter((usual) => saysTheSame(house, usual))),
);

/** A thing that is never put right has a finding at the line that left it so; the rule adds nothing to it. */
function saidBetter({ things }: Told, told: ReadonlySet<Thing>): boolean {
  return things.length > 0 && things.every((t) => told.has(t));
}

/** Usual practice is not told where a house rule already speaks of the same line. */
function withoutTwins(found: readonly Finding[]): Finding[] {
  return found.filter(
    (f) =>
      f.code !== usualPractice.code ||
      !found.some((o) => o.code === houseRule.code && o.span.start === f.span.start && o.file === f.file),
  );
}
