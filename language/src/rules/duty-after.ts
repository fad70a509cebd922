// `after A require B [before C | next | step ends]`: A opens a duty, B meets it, C or the end calls it in.

import { isEndOfDraft } from '../names/draft.js';
import { allThings } from '../names/job.js';
import { hasClause, type Thing } from '../names/model.js';
import type { Act } from '../state/act.js';
import type { Machine } from '../state/machine.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Automaton } from './automaton.js';
import { ALL, Duties } from './duties.js';
import { answersMessage, matchAct, mayMatch } from './match.js';
import { assumeAids } from './rule-aids.js';
import { insertBefore, insertBehind, lineFor, moveUp } from './rule-fix.js';
import { askedNames, isAboutIt, type Required, type RuleForm } from './rule-model.js';
import type { Teller } from './teller.js';
import { patternWords, requiredWords } from './words.js';

type After = Extract<RuleForm, { head: 'after' }>;

const MET = 'met';
const OWED = 'owed';
const isOwed = (value: string): boolean => value === OWED;

export function dutyAfter(m: Machine, form: After, teller: Teller): Automaton {
  const { pattern, required, until } = form;
  const duties = new Duties(m, MET);
  const byId = new Map(allThings(m.job.scopes).map((t) => [t.id, t]));
  const aboutIt = isAboutIt(required);
  const asked = askedNames(required)
    .map((n) => m.job.scope.resolve(n))
    .filter((t) => t !== undefined);

  const callIn = (key: string, when: Condition, by: Act | undefined, isOwedLast = false): void => {
    const owed = duties.find(key, isOwed, when);
    const act = m.acts[owed.by];
    if (owed.when === NEVER || !act) return;
    const it = byId.get(key);
    teller.tell({
      act,
      when: owed.when,
      path: owed.path,
      missing: missingWords(form, it, by),
      things: asked,
      others: by ? [[by, 'due before this line']] : [],
      isOwedLast,
      fix: () => fixFor(m, form, act, by, it),
    });
    duties.put(key, owed.when, MET, act.index);
    assumeAids(m, required, it, by ?? act, owed.when);
  };

  return {
    act(act, failed) {
      for (const key of duties.keys()) {
        const owed = duties.find(key, isOwed, act.when);
        if (owed.when === NEVER) continue;
        const it = byId.get(key);
        if (meets(required, act, it)) duties.put(key, act.when, MET, act.index);
        else if (isDue(until, act, it)) callIn(key, act.when, act);
      }
      const things = failed ? undefined : matchAct(pattern, act, undefined);
      for (const thing of things === undefined ? [] : aboutIt ? things : [undefined]) {
        if (thing && renewsItself(thing, required)) continue;
        const quiet = thing ? m.d.or(m.assumedWhere(thing), m.muted(thing)) : NEVER;
        duties.advance(thing?.id ?? ALL, m.d.minus(act.when, quiet), MET, OWED, act.index);
      }
    },
    stepEnds(step, when) {
      if (until !== 'step ends') return;
      for (const key of duties.keys()) callIn(key, when, undefined, isEndOfDraft(m.job.file, step));
    },
    end(when) {
      for (const key of duties.keys()) callIn(key, when, undefined, true);
    },
    forget: (variable) => duties.forget(variable),
  };
}

/** Whether an act is what is asked for, or may be: a name that is not declared counts as meant. */
export function meets(required: Required, act: Act, it: Thing | undefined): boolean {
  if (required.form === 'message') return answersMessage(act, required.message);
  if (required.form === 'wait') return act.statement?.verb.alone?.makes.includes('waited') ?? false;
  return matchAct(required.pattern, act, it) !== undefined || mayMatch(required.pattern, act);
}

function isDue(until: After['until'], act: Act, it: Thing | undefined): boolean {
  if (until === undefined || until === 'step ends') return false;
  if (until === 'next') return act.statement !== undefined;
  return matchAct(until, act, it) !== undefined;
}

/** A thing that its entry renews meets a demand to renew it. */
function renewsItself(thing: Thing, required: Required): boolean {
  return (
    required.form === 'act' &&
    required.pattern.verbs.some((v) => v.text === 'renew') &&
    hasClause(thing, 'renew')
  );
}

function missingWords({ required, until }: After, it: Thing | undefined, by: Act | undefined): string {
  const wanted = `\`${requiredWords(required, it)}\``;
  if (until === 'next') return `${wanted} must be the next line`;
  if (until === 'step ends') return `${wanted} must come in the same step`;
  if (until && by) return `${wanted} must come before \`${patternWords(until, it)}\``;
  return `${wanted} must come after this line`;
}

function fixFor(
  m: Machine,
  { required, until }: After,
  act: Act,
  by: Act | undefined,
  it: Thing | undefined,
) {
  const line = lineFor(m, required, it, act);
  const moved = by && until !== 'next' ? moveUp(m, by, (a) => meets(required, a, it)) : undefined;
  if (moved || line === undefined) return moved;
  if (until && typeof until === 'object' && by)
    return insertBefore(m, by, line, (a) => matchAct(until, a, undefined) !== undefined);
  // What is about this thing, or a second look at it, belongs to the line; the rest is work for the end of the job.
  return until || isAboutIt(required) || required.form === 'message'
    ? insertBehind(m, act, line)
    : insertBehind(m, lastAct(m, act), line);
}

/** The last line of the work that all paths of the act pass; else the act itself. */
function lastAct(m: Machine, act: Act): Act {
  for (let i = m.acts.length - 1; i > act.index; i--) {
    const other = m.acts[i];
    if (
      other?.statement &&
      !other.through &&
      other.file === m.job.file.path &&
      m.d.implies(act.when, other.when)
    )
      return other;
  }
  return act;
}
