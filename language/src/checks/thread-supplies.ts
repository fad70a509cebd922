// F209, F215: what lines of work put on threads, against what the torque of the set holds for.
import { type Finding, type Fix, finding } from '../diagnostics/define.js';
import { threadsLeftBare } from '../diagnostics/f215-threads-left-bare.js';
import type { Job } from '../names/job.js';
import { clausesOf, hasClause, type Thing } from '../names/model.js';
import type { BoundItem, BoundStatement } from '../names/statement.js';
import type { Check } from './check.js';
import { asksForTorque, lubricationOf } from './fastener-facts.js';
import { insertBefore, statementsOf, type WorkStatement, workStatements } from './own-lines.js';
import { wetFinding } from './torque-entries.js';

export const threadSupplies: Check = ({ job }) => {
  const supplied = workStatements(job).filter(({ statement }) => suppliesIn(statement).length > 0);
  return [
    ...supplied.flatMap(({ statement }) => wetOnDryFindings(job, statement)),
    ...bareFindings(job, supplied),
  ];
};

/** `install x with thread-grease`, `apply thread-grease to x` where the torque of x holds for dry threads. */
function wetOnDryFindings(job: Job, statement: BoundStatement): Finding[] {
  // What frees a tight bolt is cleaned off again or goes with the bolt.
  if (statement.verb.frees) return [];
  return fastenersIn(statement).flatMap((thing) =>
    lubricationOf(thing) !== 'dry'
      ? []
      : suppliesIn(statement).flatMap(({ thing: supply, item }) =>
          supply && !hasClause(supply, 'cleaner')
            ? (wetFinding(job, thing, item.name, supply.title) ?? [])
            : [],
        ),
  );
}

/** Sets whose torque names a supply that no line brings to them: once each, where they are torqued first. */
function bareFindings(job: Job, supplied: readonly WorkStatement[]): Finding[] {
  const found = new Map<Thing, Finding>();
  for (const { statement } of statementsOf(job, asksForTorque)) {
    for (const { thing, item } of statement.objects) {
      if (thing?.kind !== 'fastener' || found.has(thing)) continue;
      const supply = supplyOf(job, thing);
      if (supply === undefined || supplied.some((line) => isBrought(line.statement, supply, thing))) continue;
      const at = { file: job.file.path, span: item.name, fixes: [applyFix(job, thing, supply)] };
      found.set(thing, finding(threadsLeftBare, at, { name: thing.name, supply: supply.name }));
    }
  }
  return [...found.values()];
}

/** The supply that the entry names as what is on the threads. */
function supplyOf({ scope }: Job, thing: Thing): Thing | undefined {
  const clause = clausesOf(thing, 'lubricant')[0] ?? clausesOf(thing, 'threadlocker')[0];
  const supply = clause && scope.resolve(clause.clause.raw?.text ?? '');
  return supply?.kind === 'supply' ? supply : undefined;
}

function isBrought(statement: BoundStatement, supply: Thing, thing: Thing): boolean {
  return (
    suppliesIn(statement).some((item) => item.thing === supply) && fastenersIn(statement).includes(thing)
  );
}

/** Before the line that puts the set in, or else before the one that torques it. */
function applyFix(job: Job, thing: Thing, supply: Thing): Fix {
  const own = workStatements(job).filter(({ statement }) =>
    statement.objects.some((object) => object.thing === thing),
  );
  const torque = own.findIndex(({ statement }) => asksForTorque(statement.verb));
  const before = own
    .slice(0, torque)
    .findLast(({ statement }) => statement.verb.on.fastener?.makes.includes('started'));
  const line = (before ?? own[torque])?.line;
  const text = `apply ${supply.name} to ${thing.name}`;
  return { title: `Insert \`${text}\``, edits: line ? [insertBefore(job, line, [text])] : [] };
}

function suppliesIn(statement: BoundStatement): readonly BoundItem[] {
  const inObjects = statement.objects.filter(isSupply);
  const named = statement.named('with').filter(isSupply);
  return named.length === 0 ? inObjects : [...inObjects, ...named];
}

const isSupply = ({ thing }: BoundItem): boolean => thing?.kind === 'supply';

function fastenersIn(statement: BoundStatement): Thing[] {
  const items = [...statement.objects, ...['to', 'at', 'on'].flatMap((word) => [...statement.named(word)])];
  return items.flatMap(({ thing }) => (thing?.kind === 'fastener' ? [thing] : []));
}
