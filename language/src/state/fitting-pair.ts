// The operation that puts back what a performed one took off, where its procedure has one: `wheel-on` for `wheel-off`.
import type { Thing } from '../names/model.js';
import { type BoundStatement, bindStatement } from '../names/statement.js';
import type { Line, PerformLine } from '../syntax/tree.js';
import { lacksFor, supposedAct } from './can-do.js';
import type { Machine } from './machine.js';
import { MAKE_RULES } from './make-rules.js';
import type { StateFact } from './state-at.js';

/** The line that performs it, and its work in order. */
export interface Pair {
  readonly line: string;
  readonly statements: readonly BoundStatement[];
}

/** Undefined where nothing was taken off by `perform`, or no operation beside it fits all of that again. */
export function pairOf(m: Machine, fact: StateFact, facts: readonly StateFact[]): Pair | undefined {
  const through = fact.act?.through;
  const taken = facts.filter((f) => f.group === 'off' && f.act?.through === through);
  if (!through || taken.some((f) => f.variants !== undefined)) return undefined;
  return pairFor(
    m,
    through,
    taken.map(({ thing }) => thing),
  );
}

/** The operation of the same procedure that fits these things, which a `perform` took off. */
export function pairFor(m: Machine, through: PerformLine, taken: readonly Thing[]): Pair | undefined {
  const callee = through.from && !through.from.hole ? m.job.imports.numbered(through.from.text) : undefined;
  const scope = m.job.scopes.find((each) => each.file === callee);
  if (through.guard || !callee || !scope || taken.length === 0) return undefined;
  for (const operation of callee.operations) {
    if (operation.name === through.operation?.text || !operation.line) continue;
    const statements = statementsIn(operation.line.children, (line) =>
      bindStatement(line, callee.path, scope),
    );
    const isFitted = (one: Thing): boolean =>
      statements?.some(
        ({ verb, objects }) =>
          verb.on[one.kind]?.makes.some((make) => make === 'fitted' || make === 'started') &&
          objects.some(({ thing }) => thing === one),
      ) ?? false;
    if (statements && taken.every(isFitted))
      return { line: performLine(operation.name, through), statements };
  }
  return undefined;
}

/** Runs the work of a pair on a machine; false, with the machine spoilt, where some of it cannot be done. */
export function runPair(m: Machine, { statements }: Pair): boolean {
  const when = m.job.universe.domain;
  for (const { verb, objects } of statements) {
    for (const { thing, count, value } of objects) {
      const effect = thing && verb.on[thing.kind];
      if (!thing || !effect || lacksFor(m, verb, thing, when).length > 0) return false;
      const act = supposedAct(m, verb, when);
      m.acts.push(act);
      for (const make of effect.makes) MAKE_RULES[make](m, { act, thing, count, value, when });
    }
  }
  return true;
}

function performLine(operation: string, { from, side }: PerformLine): string {
  return `perform ${operation} from ${from?.text ?? ''}${side ? `, side ${side.text}` : ''}`;
}

/** All statements in steps, in order; undefined where some run only on a condition or more than once. */
function statementsIn(
  lines: readonly Line[],
  bind: (line: Line & { kind: 'statement' }) => BoundStatement | undefined,
): BoundStatement[] | undefined {
  const found: BoundStatement[] = [];
  for (const line of lines) {
    if (line.kind === 'if' || line.kind === 'repeat' || line.kind === 'when' || line.kind === 'perform')
      return undefined;
    if (line.kind === 'statement') {
      const statement = bind(line);
      if (!statement || statement.guard) return undefined;
      found.push(statement);
    } else if (line.kind === 'step') {
      const inner = statementsIn(line.children, bind);
      if (!inner) return undefined;
      found.push(...inner);
    }
  }
  return found;
}
