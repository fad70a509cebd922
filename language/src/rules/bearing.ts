// Which rules bear on a job: a rule that names what the job does not have asks nothing of it.
import type { Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { EventPattern } from '../syntax/tree.js';
import { isTarget } from './match.js';
import type { Rule } from './rule-model.js';
import { patternWords, stateWordsOf } from './words.js';

type Target = NonNullable<EventPattern['target']>;

/** Whether all the rule speaks of can be met in the job. */
export function applies({ form }: Rule, job: Job, things: readonly Thing[]): boolean {
  const asked = [
    form.pattern.target,
    form.head === 'never' ? form.state.target : undefined,
    form.head === 'before' ? form.since?.target : undefined,
  ];
  const required =
    form.head === 'after' || form.head === 'before'
      ? form.required.form === 'act'
        ? form.required.pattern.target
        : undefined
      : undefined;
  return (
    asked.every((t) => isThere(t, job, things)) &&
    (required?.form === 'any' && !required.mark ? true : isThere(required, job, things))
  );
}

function isThere(target: Target | undefined, job: Job, things: readonly Thing[]): boolean {
  if (!target || target.form === 'it' || target.form === 'vehicle') return true;
  if (target.form === 'names')
    return target.names.some(
      (n) => job.scope.resolve(n.text) !== undefined || things.some((t) => t.name === n.text),
    );
  return things.some((t) => isTarget(target, t, undefined));
}

/** Whether a house rule asks what a starter rule asks: the house's own words then stand alone. */
export function saysTheSame(house: Rule, usual: Rule): boolean {
  const [a, b] = [house.form, usual.form];
  if (a.head === 'never' && b.head === 'never')
    return sharesVerb(a.pattern, b.pattern) && stateWordsOf(a.state) === stateWordsOf(b.state);
  if ((a.head !== 'after' && a.head !== 'before') || a.head !== b.head) return false;
  if (!sharesVerb(a.pattern, b.pattern) || a.required.form !== b.required.form) return false;
  return (
    a.required.form !== 'act' ||
    b.required.form !== 'act' ||
    sharesVerb(a.required.pattern, b.required.pattern) ||
    patternWords(a.required.pattern) === patternWords(b.required.pattern)
  );
}

function sharesVerb(a: EventPattern, b: EventPattern): boolean {
  return a.verbs.some((v) => b.verbs.some((w) => w.text === v.text));
}
