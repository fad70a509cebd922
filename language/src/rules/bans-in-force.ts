// Lasting bans as data for the guide: from which line to which line `never A while STATE` holds, and on which
// combinations. A thing for which it holds as the vehicle comes in is no news; only what the work brings about is given.
import type { Thing } from '../names/model.js';
import type { Act } from '../state/act.js';
import { whereSome } from '../state/guarded.js';
import type { Machine } from '../state/machine.js';
import type { StateRun } from '../state/run.js';
import { type Condition, NEVER } from '../variants/diagrams.js';
import { watchedBy } from './ban.js';
import type { Rule, RuleForm } from './rule-model.js';
import { houseRules } from './run-rules.js';
import { patternWords, stateWordsOf } from './words.js';

export interface BanInForce {
  readonly rule: Rule;
  /** `turn driveshaft`. */
  readonly banned: string;
  /** `diff-pin out`. */
  readonly while: string;
  /** The act that brings it about: the ban holds for the acts behind it. */
  readonly from: Act;
  /** The act that ends it; undefined when it holds to the end. */
  readonly to: Act | undefined;
  readonly when: Condition;
  /** The combinations in words; absent when it holds on all. */
  readonly variants?: string;
}

/** The bans of the job's house rules that hold somewhere in its work, in the order they begin. Starter rules are not told. */
export function bansInForce(run: StateRun): BanInForce[] {
  return houseRules(run.machine.job)
    .flatMap((rule) => (rule.form.head === 'never' ? spansOf(run.machine, rule, rule.form) : []))
    .sort((a, b) => a.from.index - b.from.index);
}

function spansOf(
  m: Machine,
  rule: Rule,
  { pattern, state }: Extract<RuleForm, { head: 'never' }>,
): BanInForce[] {
  const out: BanInForce[] = [];
  const words = { rule, banned: patternWords(pattern), while: stateWordsOf(state) };
  const holding = new Map<Thing, Condition>();
  const first = m.asAfter(-1);
  const news = watchedBy(m.job, state).filter(({ thing, test }) =>
    first.read(thing, test.aspect).every((c) => test.test(String(c.value)) === state.not),
  );
  const watched = new Map(news.map((w) => [w.thing, w]));
  let since: { act: Act; when: Condition } | undefined;
  const close = (to: Act | undefined): void => {
    if (!since) return;
    const variants = m.job.universe.words(since.when);
    out.push({
      ...words,
      from: since.act,
      to,
      when: since.when,
      ...(variants === undefined ? {} : { variants }),
    });
    since = undefined;
  };
  for (const [i, act] of m.acts.entries()) {
    let changed = false;
    for (const change of changesBy(m).get(i) ?? []) {
      const w = watched.get(change.cell.thing);
      if (w?.test.aspect !== change.cell.aspect) continue;
      holding.set(
        w.thing,
        m.d.and(
          m.job.exists(w.thing),
          whereSome(m.d, change.to, (v) => w.test.test(String(v)) !== state.not),
        ),
      );
      changed = true;
    }
    if (!changed) continue;
    const when = [...holding.values()].reduce<Condition>((c, x) => m.d.or(c, x), NEVER);
    if (since?.when === when) continue;
    close(act);
    if (when !== NEVER) since = { act, when };
  }
  close(undefined);
  return out;
}

const indexed = new WeakMap<Machine, ReadonlyMap<number, Machine['changes']>>();

function changesBy(m: Machine): ReadonlyMap<number, Machine['changes']> {
  let byAct = indexed.get(m);
  if (!byAct) {
    const map = new Map<number, Machine['changes']>();
    for (const change of m.changes) map.set(change.act, [...(map.get(change.act) ?? []), change]);
    byAct = map;
    indexed.set(m, byAct);
  }
  return byAct;
}
