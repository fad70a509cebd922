// Every name that a file uses, with the kinds of thing that fit its place. Checks of names read it.

import type { Job } from '../names/job.js';
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
  const stack: { line: Line; thing: Thing | undefined }[] = [];
  const push = (lines: readonly Line[], thing: Thing | undefined): void => {
    for (let i = lines.length - 1; i >= 0; i--) {
      const line = lines[i];
      if (line) stack.push({ line, thing: entries.get(line) ?? thing });
    }
  };
  push(job.file.lines, undefined);
  for (let next = stack.pop(); next; next = stack.pop()) {
    const { line, thing } = next;
    if (!line.broken) for (const use of usesOf(line, thing, job)) uses.push(use);
    push(line.children, thing);
  }
  return uses;
});

function usesOf(line: Line, thing: Thing | undefined, job: Job): NameUse[] {
  switch (line.kind) {
    case 'statement':
      return ofStatement(line, job);
    case 'clauses':
      return thing ? line.clauses.flatMap((clause) => ofRelation(line, thing, clause)) : [];
    case 'prerequisite':
      return [
        {
          name: line.name,
          item: undefined,
          line,
          kinds: ['condition', 'tool'],
          at: { form: 'prerequisite' },
        },
      ];
    case 'if':
      return line.subject
        ? [{ name: line.subject, item: undefined, line, kinds: [], at: { form: 'subject' } }]
        : [];
    case 'message':
      return line.reference
        ? [{ name: line.reference, item: undefined, line, kinds: ['message'], at: { form: 'message' } }]
        : [];
    default:
      return [];
  }
}

function ofStatement(line: Extract<Line, { kind: 'statement' }>, job: Job): NameUse[] {
  const statement = bindStatement(line, job.file.path, job.scope);
  if (!statement) return [];
  const uses: NameUse[] = [];
  const objects = kindsOn(statement.verb);
  for (const item of line.items) uses.push(...itemUses(item, line, objects, { form: 'object', statement }));
  for (const clause of statement.clauses) {
    const slot = statement.verb.clauses[clause.word];
    for (const item of clause.items) {
      if (isPosition(item.name.text, statement)) continue;
      uses.push(...itemUses(item, line, slot?.names ?? [], { form: 'clause', statement, clause }));
    }
    const target = clause.event?.target;
    if (target?.form !== 'names') continue;
    for (const name of target.names)
      uses.push({ name, item: undefined, line, kinds: [], at: { form: 'event' } });
  }
  return uses;
}

/** `move axle to pushed-in`: a position of the thing itself, not a name. */
function isPosition(name: string, statement: BoundStatement): boolean {
  return statement.objects.some(
    ({ thing }) => thing?.kind === 'part' && thing.values.some((value) => value.text === name),
  );
}

function ofRelation(line: Line, thing: Thing, clause: Clause): NameUse[] {
  const kinds = ENTRY_CLAUSE_BY_WORD.get(clause.word)?.names ?? [];
  return clause.items.flatMap((item) => itemUses(item, line, kinds, { form: 'relation', thing, clause }));
}

function itemUses(item: Item, line: Line, kinds: readonly ThingKind[], at: NameUse['at']): NameUse[] {
  return [item.name, ...item.alternatives]
    .filter((name) => name.text !== '')
    .map((name) => ({ name, item, line, kinds, at }));
}

/** Kinds of thing that a verb acts on. */
export const kindsOn = once((verb: VerbDef): readonly ThingKind[] => [
  ...THING_KINDS.filter((kind) => verb.on[kind] !== undefined),
  ...(verb.on.machine ? (['machine'] as const) : []),
]);
