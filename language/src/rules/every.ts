// `every A needs CLAUSE` and `every A at most once`.
import type { Thing } from '../names/model.js';
import { hasClause } from '../names/model.js';
import type { Act } from '../state/act.js';
import type { Machine } from '../state/machine.js';
import type { Clause } from '../syntax/tree.js';
import { NEVER } from '../variants/diagrams.js';
import type { Automaton } from './automaton.js';
import { Duties } from './duties.js';
import { isTarget, matchAct } from './match.js';
import { addClause } from './rule-fix.js';
import type { RuleForm } from './rule-model.js';
import type { Teller } from './teller.js';
import { clauseWords } from './words.js';

type Every = Extract<RuleForm, { head: 'every' }>;

const FIRST = 'first';
const DONE = 'done';

export function everyLine(m: Machine, form: Every, teller: Teller): Automaton {
  const { pattern, needs, once } = form;
  const duties = new Duties(m, FIRST);
  m.demands.push((verb, thing) => demand(form, verb, thing));
  return {
    act(act, failed) {
      for (const { thing } of act.statement?.objects ?? [])
        if (thing && once && becomesNew(act, thing)) duties.put(thing.id, act.when, FIRST, act.index);
      const things = failed ? undefined : matchAct(pattern, act, undefined);
      if (!things) return;
      if (needs && !isGiven(needs, act)) {
        teller.tell({
          act,
          when: act.when,
          things: [],
          missing: `this line needs \`${clauseWords(needs)}\``,
          fix: () => addClause(m, act, clauseWords(needs)),
        });
      }
      // A torque in stages is one torque.
      if (!once || Number(act.statement?.clause('stage')?.raw?.text) > 1) return;
      for (const thing of things) {
        const again = duties.find(thing.id, (v) => v === DONE, act.when);
        const first = m.acts[again.by];
        if (again.when !== NEVER && first) {
          teller.tell({
            act,
            when: again.when,
            path: again.path,
            things: [],
            missing: `\`${thing.name}\` has been ${act.statement?.verb.done ?? 'done'} before`,
            others: [[first, 'the first time here']],
          });
        }
        duties.put(thing.id, act.when, DONE, act.index);
      }
    },
    stepEnds() {},
    end() {},
    forget: (variable) => duties.forget(variable),
  };
}

function isGiven(needs: Clause, act: Act): boolean {
  return (
    act.statement?.clauses.some(
      (c) =>
        c.word === needs.word &&
        needs.items.every((i) =>
          c.items.some((x) => [x.name, ...x.alternatives].some((n) => n.text === i.name.text)),
        ),
    ) ?? false
  );
}

/** A new piece in place of the old one begins anew. */
function becomesNew(act: Act, thing: Thing): boolean {
  const makes = act.statement?.verb.on[thing.kind]?.makes ?? [];
  return (
    makes.includes('renewed') ||
    (hasClause(thing, 'renew') && (makes.includes('started') || makes.includes('fitted')))
  );
}

/** The clause a statement must have by this rule, as it is written. */
function demand({ pattern, needs }: Every, verb: string, thing: Thing): string | undefined {
  if (
    !needs ||
    !pattern.verbs.some((v) => v.text === verb) ||
    !pattern.target ||
    !isTarget(pattern.target, thing, undefined)
  )
    return undefined;
  return clauseWords(needs);
}
