// `before A require B | wait T | message [since C]`: A may come only after B, and with `since` only after a B behind C.
import type { Fix } from '../diagnostics/define.js';
import { minutes } from '../names/figures.js';
import type { Thing } from '../names/model.js';
import type { Act } from '../state/act.js';
import { assumeLack } from '../state/assume.js';
import type { Machine } from '../state/machine.js';
import { notOff } from '../state/relations.js';
import { directionOfMake } from '../state/wants.js';
import type { EventPattern } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { Automaton } from './automaton.js';
import { ALL, Duties } from './duties.js';
import { meets } from './duty-after.js';
import { isTarget, matchAct } from './match.js';
import { alreadyTold, assumeAids, boundTo, silentOf } from './rule-aids.js';
import { insertBefore, lineFor, moveUp } from './rule-fix.js';
import { askedNames, isAboutIt, type Required, type Rule, type RuleForm } from './rule-model.js';
import type { Teller } from './teller.js';
import { patternWords, requiredWords, timeWords } from './words.js';

type Before = Extract<RuleForm, { head: 'before' }>;

/** `since` has not happened; it has, but what is asked for has not; both have. */
const NOT_YET = 'not yet';
const OPEN = 'open';
const MET = 'met';

export function dutyBefore(m: Machine, rule: Rule, form: Before, teller: Teller): Automaton {
  const { pattern, required, since } = form;
  const duties = new Duties(m, since ? NOT_YET : OPEN);
  const wait = required.form === 'wait' ? (minutes(required.time) ?? 0) : undefined;
  const clock = `rule ${rule.thing.id}`;
  const aboutIt = isAboutIt(required);
  const asked = askedNames(required)
    .map((n) => m.job.scope.resolve(n))
    .filter((t) => t !== undefined);
  const sinceThings = since?.target ? boundTo(m, since.target) : [];
  // Where the rule has been told broken: what it asked for is then taken as done.
  let excused: Condition = NEVER;
  if (wait !== undefined && !since) m.clocks.start(clock, 'least', wait, m.alive, -1);

  /** Where A would come too soon, and where C itself has not happened. */
  const tooSoon = (key: string, when: Condition): { when: Condition; unopened: Condition; left: number } => {
    const asked = m.d.minus(when, excused);
    // What a finding before this one has assumed needs no second finding.
    const unopened = m.d.minus(
      duties.find(key, (v) => v === NOT_YET, asked).when,
      sinceThings.reduce<Condition>((c, t) => m.d.or(c, m.assumedWhere(t)), NEVER),
    );
    if (wait === undefined)
      return { when: m.d.or(unopened, duties.find(key, (v) => v === OPEN, asked).when), unopened, left: 0 };
    const short = m.clocks.short(clock, wait, m.d.minus(asked, unopened));
    const left = Math.max(0, ...short.map((s) => wait - s.minutes));
    return { when: short.reduce<Condition>((c, s) => m.d.or(c, s.when), unopened), unopened, left };
  };

  const ask = (act: Act, it: Thing | undefined): void => {
    const missing = tooSoon(it?.id ?? ALL, act.when);
    if (missing.when === NEVER || m.d.implies(missing.when, alreadyTold(m, required))) return;
    const fix = (): Fix | undefined => {
      if (missing.unopened !== NEVER) return undefined;
      const line = lineFor(m, required, it, act, missing.left > 0 ? missing.left : undefined);
      return (
        (wait === undefined ? moveUp(m, act, (a) => meets(required, a, it)) : undefined) ??
        (line === undefined
          ? undefined
          : insertBefore(m, act, line, (a) => matchAct(pattern, a, undefined) !== undefined))
      );
    };
    teller.tell({
      act,
      when: missing.when,
      missing: missingWords(form, it, missing.left),
      things: asked.length > 0 ? asked : anyOf(m, required),
      fix,
    });
    excused = m.d.or(excused, missing.when);
    if (since && missing.unopened !== NEVER) assumeSince(m, since, act, missing.unopened);
    assumeAids(m, required, it, act, missing.when);
  };

  return {
    act(act, failed) {
      const begins = since !== undefined && matchAct(since, act, undefined) !== undefined;
      const things = failed || begins ? undefined : matchAct(pattern, act, undefined);
      for (const thing of things === undefined ? [] : aboutIt ? things : [undefined]) ask(act, thing);
      if (since && begins) {
        excused = m.d.minus(excused, act.when);
        if (wait !== undefined) m.clocks.start(clock, 'least', wait, act.when, act.index);
        for (const key of new Set([ALL, ...duties.keys()])) duties.put(key, act.when, OPEN, act.index);
      } else if (since && undoes(since, act)) {
        for (const key of duties.keys()) duties.put(key, act.when, NOT_YET, act.index);
      }
      if (wait === undefined) meetBy(act);
    },
    stepEnds() {},
    end() {},
    forget(variable) {
      duties.forget(variable);
      excused = m.d.forget(excused, variable);
    },
  };

  function meetBy(act: Act): void {
    if (!aboutIt) {
      if (meets(required, act, undefined)) duties.advance(ALL, act.when, OPEN, MET, act.index);
      return;
    }
    for (const { thing } of act.statement?.objects ?? []) {
      if (thing && meets(required, act, thing)) duties.advance(thing.id, act.when, OPEN, MET, act.index);
    }
  }
}

/** What any one of would do: where all of it is told as never done, the rule has no more to say. */
function anyOf(m: Machine, required: Required): readonly Thing[] {
  return required.form === 'act' && required.pattern.target ? boundTo(m, required.pattern.target) : [];
}

/** Whether the act turns the `since` event back: the lead is connected again. */
function undoes(since: EventPattern, act: Act): boolean {
  const { target } = since;
  const way = directionsOf(since);
  return (act.statement?.objects ?? []).some(({ thing }) => {
    if (!thing || !target || !isTarget(target, thing, undefined)) return false;
    return (act.statement?.verb.on[thing.kind]?.makes ?? []).some(
      (make) => directionOfMake(make) === (way.has('apart') ? 'together' : 'apart') && way.size > 0,
    );
  });
}

function directionsOf(pattern: EventPattern): ReadonlySet<string> {
  const makes = pattern.verbs.flatMap((v) =>
    Object.values(VERB_BY_WORD.get(v.text)?.on ?? {}).flatMap((e) => e.makes),
  );
  return new Set(makes.map(directionOfMake).filter((d) => d !== 'here'));
}

/** A rule that waits for something to be taken apart assumes it after it was told: the missing line is one fault. */
function assumeSince(m: Machine, { target, verbs }: EventPattern, act: Act, when: Condition): void {
  if (!target || !directionsOf({ verbs } as EventPattern).has('apart')) return;
  const lacks = boundTo(m, target).flatMap((thing) =>
    notOff(m, { target: thing, count: undefined, value: undefined, when: m.job.exists(thing) }, when),
  );
  if (lacks.length === 0) return;
  const deficit = silentOf(act, lacks);
  m.ruled.push(deficit);
  for (const lack of lacks) assumeLack(m, lack, deficit);
}

function missingWords({ required, since }: Before, it: Thing | undefined, left: number): string {
  const wanted = requiredWords(required, it);
  const what =
    required.form === 'message'
      ? required.message === 'hold'
        ? 'a `hold`'
        : `\`${wanted}\`, or a stronger word,`
      : `\`${wanted}\``;
  const after = since ? ` after \`${patternWords(since, it)}\` and` : '';
  return `${what} must come${after} before this line${left > 0 ? `: ${timeWords(left)} more` : ''}`;
}
