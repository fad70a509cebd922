// `never A while STATE`: a ban that lasts as long as the state does.
import type { Fix } from '../diagnostics/define.js';
import { allThings, type Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { Act } from '../state/act.js';
import { assumeLack } from '../state/assume.js';
import type { Deficit, Lack } from '../state/deficit.js';
import { insertFix } from '../state/fixes.js';
import type { Value } from '../state/guarded.js';
import type { Machine } from '../state/machine.js';
import { directionOf, directionOfMake, MAKES_WANT, type Want } from '../state/wants.js';
import type { StatePattern } from '../syntax/tree.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import type { Make } from '../vocabulary/needs.js';
import type { Automaton } from './automaton.js';
import { isTarget, matchAct } from './match.js';
import { silentOf } from './rule-aids.js';
import { moveUp } from './rule-fix.js';
import type { RuleForm } from './rule-model.js';
import { type StateTest, stateTest } from './state-words.js';
import type { Teller } from './teller.js';
import { stateWordsOf } from './words.js';

/** The things a ban watches, with how to ask for their state. */
export function watchedBy(job: Job, { target, state }: StatePattern): { thing: Thing; test: StateTest }[] {
  return allThings(job.scopes).flatMap((thing) => {
    const test = isTarget(target, thing, undefined) ? stateTest(thing, state.text) : undefined;
    return test ? [{ thing, test }] : [];
  });
}

export function ban(m: Machine, form: Extract<RuleForm, { head: 'never' }>, teller: Teller): Automaton {
  const { pattern, state } = form;
  const watched = watchedBy(m.job, state).map(({ thing, test }) => ({
    thing,
    test,
    isBad: (value: Value) => test.test(String(value)) === state.not,
  }));

  /** A state that one line brought about is told once, however often the ban is broken in it. */
  const told = new Set<string>();

  const lacksAt = (when: Condition): Lack[] =>
    watched.flatMap(({ thing, test, isBad }) => {
      const some = m.d.and(when, m.fails(thing, test.aspect, isBad));
      if (some === NEVER) return [];
      // What is so only because a finding assumed it breaks no rule.
      const bad = m.d.minus(m.d.and(some, m.job.exists(thing)), m.assumedWhere(thing));
      if (bad === NEVER) return [];
      const maker = m.read(thing, test.aspect).find((c) => m.d.and(c.when, bad) !== NEVER)?.by ?? -1;
      const value = state.not
        ? state.state.text
        : thing.values.find((v) => v.text !== state.state.text)?.text;
      return [
        {
          thing,
          want: state.not ? test.holds : test.otherwise,
          when: bad,
          maker,
          ...(value === undefined ? {} : { value }),
        },
      ];
    });

  return {
    act(act, failed) {
      if (failed || !matchAct(pattern, act, undefined)) return;
      const lacks = lacksAt(act.when).filter((l) => !told.has(`${l.maker} ${l.thing.id}`));
      if (lacks.length === 0) return;
      for (const l of lacks) told.add(`${l.maker} ${l.thing.id}`);
      const deficit = silentOf(act, lacks);
      const makers = [...new Set(lacks.map((l) => m.acts[l.maker]).filter((a) => a !== undefined))];
      teller.tell({
        act,
        when: lacks.reduce<Condition>((c, l) => m.d.or(c, l.when), NEVER),
        things: lacks.map((l) => l.thing),
        missing: `not while \`${stateWordsOf(state)}\``,
        others: makers.map((a) => [a, `${a.statement?.verb.done ?? 'changed'} here`] as const),
        fix: () => banFix(m, deficit),
      });
      // What must be put back anyway is left as it is: if it never is, its own finding speaks.
      if (lacks.every((l) => directionOf(l.want) === 'together')) return;
      m.ruled.push(deficit);
      for (const lack of lacks) assumeLack(m, lack, deficit);
    },
    stepEnds() {},
    end() {},
    forget() {},
  };
}

/** What a line may end at any place: putting back the rest asks for more than the one line. */
const MOVES: ReadonlySet<Want> = new Set<Want>([
  'set',
  'gone',
  'untagged',
  'off',
  'disconnected',
  'supported',
]);

/**
 * Ends the state before the banned act: by the line of the step that ends it later, or by one that is missing. What is put
 * back anyway, or ended in another step, is the writer's to move.
 */
function banFix(m: Machine, { act, ...deficit }: Deficit): Fix | undefined {
  const { lacks } = deficit;
  const [lack] = lacks;
  if (!act || !lack || lacks.some(({ want }) => !MOVES.has(want))) return undefined;
  const after = m.acts.slice(act.index + 1);
  const moved = lacks.length === 1 ? moveUp(m, act, (later) => reaches(later, lack)) : undefined;
  const isMissing = lacks.every((each) => {
    const { thing, want, maker } = each;
    // A condition of three values has no one value that is not the banned one.
    if (want === 'set') return thing.values.length === 2;
    if (after.some((later) => reaches(later, each))) return false;
    return want === 'supported' || (maker < 0 && after.some((later) => putsBack(later, thing)));
  });
  return moved ?? (isMissing ? insertFix(m, { ...deficit, act }, lacks) : undefined);
}

/** Whether the act brings the thing into the state wanted. */
const reaches = (act: Act, { thing, want, value }: Lack): boolean =>
  makesOf(act, thing, want === 'set' ? value : undefined).some((make) => MAKES_WANT[make]?.includes(want));

/** Whether the act puts together what a line before it has taken apart. */
const putsBack = (act: Act, thing: Thing): boolean =>
  makesOf(act, thing).some((make) => directionOfMake(make) === 'together');

function makesOf({ statement }: Act, thing: Thing, value?: string): readonly Make[] {
  const isAbout = statement?.objects.some(
    (o) => o.thing === thing && (value === undefined || o.value === value),
  );
  return isAbout ? (statement?.verb.on[thing.kind]?.makes ?? []) : [];
}
