// Every name that a file uses, with the kinds of thing that fit its place. Checks of names read it.

import { everyLine, type Job } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import { bindStatement } from '../names/statement.js';
import type { Clause, Item, Line, Name } from '../syntax/tree.js';
import { memory, once } from '../text/once.js';
import { ENTRY_CLAUSE_BY_WORD } from '../vocabulary/clauses.js';
import { THING_KINDS, type ThingKind } from '../vocabulary/kinds.js';
import type { VerbDef } from '../vocabulary/verb.js';

export interface NameUse {
  readonly name: Name;
  /** What is declared under the name. */
  readonly thing: Thing | undefined;
  readonly item: Item | undefined;
  readonly line: Line;
  /** Kinds that may stand there; empty where any may. */
  readonly kinds: readonly ThingKind[];
  readonly at:
    | { readonly form: 'object'; readonly statement: BoundStatement }
    | { readonly form: 'clause'; readonly statement: BoundStatement; readonly clause: Clause }
    | { readonly form: 'relation'; readonly thing: Thing; readonly clause: Clause }
    | { readonly form: 'prerequisite' | 'subject' | 'message' | 'event' };
}

/** All uses in the job's own file in the order written; lines with a finding of their own syntax are left out. */
export const nameUses = once((job: Job): readonly NameUse[] => {
  const usesOf = usesUnder(job.scope.names);
  let entries: ReadonlyMap<Line, Thing> | undefined;
  const below = (line: Line): readonly NameUse[] =>
    usesOf(line, () => {
      entries ??= entriesOf(job.file);
      return usesBelow(job, line, entries);
    });
  return job.file.lines.flatMap((top) =>
    usesOf(top, () => {
      const own: Gathered = { uses: [], job };
      if (!top.broken) addLine(own, top, undefined);
      return [...own.uses, ...top.children.flatMap(below)];
    }),
  );
});

/** What the lines of a section or a step name: the same until one of them is edited, or a name means another thing. */
const usesUnder = once((_names: Job['scope']['names']) => memory<Line, readonly NameUse[]>());

function entriesOf({ things }: Job['file']): ReadonlyMap<Line, Thing> {
  const entries = new Map<Line, Thing>();
  for (const thing of things) if (thing.line) entries.set(thing.line, thing);
  return entries;
}

/** The entry that a line of clauses belongs to is the last one begun above it. */
function usesBelow(job: Job, top: Line, entries: ReadonlyMap<Line, Thing>): readonly NameUse[] {
  const to: Gathered = { uses: [], job };
  let entry: Thing | undefined;
  let end = 0;
  for (const line of everyLine([top])) {
    const begun = entries.get(line);
    if (begun) {
      entry = begun;
      end = line.end;
    } else if (line.start >= end) entry = undefined;
    if (!line.broken) addLine(to, line, entry);
  }
  return to.uses;
}

interface Gathered {
  readonly uses: NameUse[];
  readonly job: Job;
}

function addLine(to: Gathered, line: Line, entry: Thing | undefined): void {
  switch (line.kind) {
    case 'statement':
      addStatement(to, line);
      break;
    case 'clauses':
      if (entry) for (const clause of line.clauses) addRelation(to, line, entry, clause);
      break;
    case 'prerequisite':
      addName(to, line.name, undefined, line, ['condition', 'tool'], { form: 'prerequisite' });
      break;
    case 'if':
      if (line.subject) addName(to, line.subject, undefined, line, ANY, { form: 'subject' });
      break;
    case 'message':
      if (line.reference) addName(to, line.reference, undefined, line, ['message'], { form: 'message' });
      break;
    default:
      break;
  }
}

const ANY: readonly ThingKind[] = [];

function addStatement(to: Gathered, line: Extract<Line, { kind: 'statement' }>): void {
  const statement = bindStatement(line, to.job.file.path, to.job.scope);
  if (!statement) return;
  const objects = kindsOn(statement.verb);
  const at = { form: 'object', statement } as const;
  for (const item of line.items) addItem(to, item, line, objects, at);
  for (const clause of statement.clauses) {
    const kinds = statement.verb.clauses[clause.word]?.names ?? ANY;
    for (const item of clause.items)
      if (!isPosition(item.name.text, statement))
        addItem(to, item, line, kinds, { form: 'clause', statement, clause });
    const target = clause.event?.target;
    if (target?.form !== 'names') continue;
    for (const name of target.names) addName(to, name, undefined, line, ANY, { form: 'event' });
  }
}

/** `move axle to pushed-in`: a position of the thing itself, not a name. */
function isPosition(name: string, statement: BoundStatement): boolean {
  return statement.objects.some(
    ({ thing }) => thing?.kind === 'part' && thing.values.some((value) => value.text === name),
  );
}

function addRelation(to: Gathered, line: Line, entry: Thing, clause: Clause): void {
  const kinds = ENTRY_CLAUSE_BY_WORD.get(clause.word)?.names ?? ANY;
  for (const item of clause.items) addItem(to, item, line, kinds, { form: 'relation', thing: entry, clause });
}

function addItem(to: Gathered, item: Item, line: Line, kinds: readonly ThingKind[], at: NameUse['at']): void {
  if (item.name.text !== '') addName(to, item.name, item, line, kinds, at);
  for (const name of item.alternatives) if (name.text !== '') addName(to, name, item, line, kinds, at);
}

function addName(
  { uses, job }: Gathered,
  name: Name,
  item: Item | undefined,
  line: Line,
  kinds: readonly ThingKind[],
  at: NameUse['at'],
): void {
  uses.push({ name, thing: job.scope.resolve(name.text), item, line, kinds, at });
}

/** Kinds of thing that a verb acts on. */
export const kindsOn = once((verb: VerbDef): readonly ThingKind[] => [
  ...THING_KINDS.filter((kind) => verb.on[kind] !== undefined),
  ...(verb.on.machine ? (['machine'] as const) : []),
]);
