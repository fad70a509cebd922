// S316: parts that are pressed, pulled, pried or tapped in or out, and that no line takes off or puts on.
import { type Fix, finding } from '../diagnostics/define.js';
import { drivenOnly } from '../diagnostics/s316-driven-only.js';
import type { Thing } from '../names/model.js';
import type { Check } from './check.js';
import { insertBehind, statementsOf, type WorkStatement, workStatements } from './own-lines.js';

export const drivenParts: Check = ({ job }) => {
  const driven = new Map<Thing, WorkStatement[]>();
  for (const work of statementsOf(job, ({ drives }) => drives === true)) {
    if (otherVerb(work) === undefined) continue;
    for (const { thing } of work.statement.objects) {
      // What another file declares may be taken off and put on in an operation of its own.
      if (thing?.kind === 'part' && job.file.things.includes(thing))
        driven.set(thing, [...(driven.get(thing) ?? []), work]);
    }
  }
  if (driven.size === 0) return [];
  const followed = new Set(
    workStatements(job).flatMap(({ statement: { verb, objects } }) =>
      objects.flatMap(({ thing }) => (thing && verb.on[thing.kind]?.makes.some(isOffOrOn) ? [thing] : [])),
    ),
  );
  return [...driven].flatMap(([thing, works]) => {
    const [first] = works;
    if (!first || followed.has(thing)) return [];
    const other = otherVerb(first) ?? '';
    const fix: Fix = {
      title: `Insert ${[...new Set(works.map((work) => `\`${otherVerb(work)} ${thing.name}\``))].join(' and ')}`,
      edits: works.map((work) => insertBehind(job, work.line, `${otherVerb(work)} ${thing.name}`)),
    };
    const at = first.statement.objects.find((object) => object.thing === thing)?.item ?? first.line;
    const verb = first.statement.verb.word;
    return [
      finding(
        drivenOnly,
        { file: job.file.path, span: { start: first.line.start, end: at.end }, fixes: [fix] },
        { name: thing.name, verb, other, isOut: other === 'remove' },
      ),
    ];
  });
};

/** What says that the part is off or on; undefined where it is not said to leave its place, or only by a length. */
function otherVerb({ statement }: WorkStatement): 'remove' | 'install' | undefined {
  if (statement.clause('bare')?.spec?.stages[0]?.measure.measure?.unit.kind === 'length') return undefined;
  if (statement.clause('from')) return 'remove';
  return statement.clause('into') ? 'install' : undefined;
}

const OFF_OR_ON: ReadonlySet<string> = new Set([
  'taken off',
  'hung',
  'fitted',
  'moved',
  'placed',
  'removed',
  'renewed',
]);
const isOffOrOn = (made: string): boolean => OFF_OR_ON.has(made);
