// Every name that a file uses, with the kinds of thing that fit its place. Checks of names read it.

import { type Job, linesOf } from '../names/job.js';
import type { Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import { bindStatement } from '../names/statement.js';
import type { Clause, Item, Line, Name } from '../syntax/tree.js';
import { once } from '../text/once.js';
import { ENTRY_CLAUSE_BY_WORD } from '../vocabulary/clauses.js';
import { THING_KINDS, type ThingKind } from '../vocabulary/kinds.js';
import type { VerbDef } from '../vocabulary/verb.js';

export interface NameUse {
  readonly name: Name;
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
  const uses: NameUse[] = [];
  const entries = new Map<Line, Thing>();
  for (const thing of job.file.things) if (thing.line) entries.set(thing.line, thing);
  // The entry that a line of clauses belongs to is the last one begun above it.
  let thing: Thing | undefined;
  let end = 0;
  for (const line of linesOf(job.file)) {
    const entry = entries.get(line);
    if (entry) {
      thing = entry;
      end = line.end;
    } else if (line.start >= end) thing = undefined;
    if (!line.broken) addUses(uses, line, thing, job);
  }
  return uses;
});

function addUses(uses: NameUse[], line: Line, thing: Thing | undefined, job: Job): void {
  switch (line.kind) {
    case 'statement':
      addStatement(uses, line, job);
      break;
    case 'clauses':
      if (thing) for (const clause of line.clauses) addRelation(uses, line, thing, clause);
      break;
    case 'prerequisite':
      uses.push({ name: line.name, item: undefined, line, kinds: ['condition', 'tool'], at: PREREQUISITE });
      break;
    case 'if':
      if (line.subject) uses.push({ name: line.subject, item: undefined, line, kinds: ANY, at: SUBJECT });
      break;
    case 'message':
      if (line.reference)
        uses.push({ name: line.reference, item: undefined, line, kinds: ['message'], at: MESSAGE });
      break;
    default:
      break;
  }
}

const ANY: readonly ThingKind[] = [];
const PREREQUISITE = { form: 'prerequisite' } as const;
const SUBJECT = { form: 'subject' } as const;
const MESSAGE = { form: 'message' } as const;
const EVENT = { form: 'event' } as const;

function addStatement(uses: NameUse[], line: Extract<Line, { kind: 'statement' }>, job: Job): void {
  const statement = bindStatement(line, job.file.path, job.scope);
  if (!statement) return;
  const objects = kindsOn(statement.verb);
  const at = { form: 'object', statement } as const;
  for (const item of line.items) addItem(uses, item, line, objects, at);
  for (const clause of statement.clauses) {
    const kinds = statement.verb.clauses[clause.word]?.names ?? ANY;
    for (const item of clause.items)
      if (!isPosition(item.name.text, statement))
        addItem(uses, item, line, kinds, { form: 'clause', statement, clause });
    const target = clause.event?.target;
    if (target?.form !== 'names') continue;
    for (const name of target.names) uses.push({ name, item: undefined, line, kinds: ANY, at: EVENT });
  }
}

/** `move axle to pushed-in`: a position of the thing itself, not a name. */
function isPosition(name: string, statement: BoundStatement): boolean {
  return statement.objects.some(
    ({ thing }) => thing?.kind === 'part' && thing.values.some((value) => value.text === name),
  );
}

function addRelation(uses: NameUse[], line: Line, thing: Thing, clause: Clause): void {
  const kinds = ENTRY_CLAUSE_BY_WORD.get(clause.word)?.names ?? ANY;
  for (const item of clause.items) addItem(uses, item, line, kinds, { form: 'relation', thing, clause });
}

function addItem(
  uses: NameUse[],
  item: Item,
  line: Line,
  kinds: readonly ThingKind[],
  at: NameUse['at'],
): void {
  if (item.name.text !== '') uses.push({ name: item.name, item, line, kinds, at });
  for (const name of item.alternatives) if (name.text !== '') uses.push({ name, item, line, kinds, at });
}

/** Kinds of thing that a verb acts on. */
export const kindsOn = once((verb: VerbDef): readonly ThingKind[] => [
  ...THING_KINDS.filter((kind) => verb.on[kind] !== undefined),
  ...(verb.on.machine ? (['machine'] as const) : []),
]);
