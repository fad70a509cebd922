// A statement with its names resolved: which verb, which things, which clauses.

import { numberOf } from '../quantity/index.js';
import type { Clause, Guard, Item, StatementLine } from '../syntax/tree.js';
import { VERB_BY_WORD } from '../verbs/index.js';
import type { VerbDef } from '../vocabulary/verb.js';
import type { Thing } from './model.js';
import { builtIn, type Scope } from './scope.js';

export interface BoundItem {
  readonly item: Item;
  /** Undefined when the name is not declared. */
  readonly thing: Thing | undefined;
  readonly count: number | undefined;
  readonly value: string | undefined;
}

export interface BoundStatement {
  readonly line: StatementLine;
  readonly file: string;
  readonly verb: VerbDef;
  readonly objects: readonly BoundItem[];
  /** Clauses of the line and of the clause lines below it. */
  readonly clauses: readonly Clause[];
  readonly guard: Guard | undefined;
  clause(word: string): Clause | undefined;
  /** Things named in a clause. */
  named(word: string): readonly BoundItem[];
}

/** Of a scope, since a statement may outlive it. */
type Names = Scope['names'];

function bindItem(item: Item, names: Names): BoundItem {
  return {
    item,
    thing: names.get(item.name.text),
    count: item.count?.value === undefined ? undefined : numberOf(item.count.value),
    value: item.value?.text,
  };
}

/** The statements of a scope, and those of the same file before an edit, of which some are still there. */
interface BoundLines {
  readonly own: Map<StatementLine, Bound>;
  before: ReadonlyMap<StatementLine, Bound> | undefined;
}

/** The run and several checks ask for the same statements: each is bound once in a scope. */
const known = new WeakMap<Scope, BoundLines>();

/** What was bound before an edit that changed no name holds for the lines that are still there. */
export function keepBound(before: Scope, now: Scope): void {
  if (before.names !== now.names) return;
  known.set(now, { own: new Map(), before: known.get(before)?.own });
}

/** Called when the lines that are still there have been asked for: the others need not stay in memory. */
export function forgetEarlierBound(scope: Scope): void {
  const inScope = known.get(scope);
  if (inScope) inScope.before = undefined;
}

/** Undefined when the verb is not known; the line is then a syntax finding. */
export function bindStatement(line: StatementLine, file: string, scope: Scope): BoundStatement | undefined {
  const verb = VERB_BY_WORD.get(line.verb.text);
  if (!verb) return undefined;
  let inScope = known.get(scope);
  if (!inScope) {
    inScope = { own: new Map(), before: undefined };
    known.set(scope, inScope);
  }
  let bound = inScope.own.get(line);
  if (!bound) {
    bound = inScope.before?.get(line) ?? new Bound(line, verb, file, scope.names);
    inScope.own.set(line, bound);
  }
  return bound;
}

/** There is one for every statement of a job, at every edit: what few ask for is made when it is asked for. */
class Bound implements BoundStatement {
  readonly objects: readonly BoundItem[];
  readonly clauses: readonly Clause[];
  readonly guard: Guard | undefined;
  readonly #names: Names;
  #named: Map<string, readonly BoundItem[]> | undefined;

  constructor(
    readonly line: StatementLine,
    readonly verb: VerbDef,
    readonly file: string,
    names: Names,
  ) {
    const below = line.children.some((c) => c.kind === 'clauses');
    this.objects = line.items.map((item) => bindObject(item, names, verb));
    this.clauses = below
      ? [...line.clauses, ...line.children.flatMap((c) => (c.kind === 'clauses' ? c.clauses : []))]
      : line.clauses;
    this.guard = line.guard;
    this.#names = names;
  }

  clause(word: string): Clause | undefined {
    for (const clause of this.clauses) if (clause.word === word) return clause;
    return undefined;
  }

  named(word: string): readonly BoundItem[] {
    if (!this.clause(word)) return NONE;
    this.#named ??= new Map();
    let list = this.#named.get(word);
    if (!list) {
      list = this.clauses
        .filter((c) => c.word === word)
        .flatMap((c) => c.items.map((item) => bindItem(item, this.#names)));
      this.#named.set(word, list);
    }
    return list;
  }
}

const NONE: readonly BoundItem[] = [];

/**
 * `run engine` runs the engine, also where a catalogue has a place of that name. One of the machines that the verb does
 * not move is a finding; the work goes on as if the one that it does were named.
 */
function bindObject(item: Item, names: Names, verb: VerbDef): BoundItem {
  const bound = bindItem(item, names);
  const [only, ...others] = verb.machines ?? [];
  if (bound.thing && verb.on[bound.thing.kind] && bound.thing.kind !== 'machine') return bound;
  if (verb.machines?.includes(item.name.text)) return { ...bound, thing: builtIn(item.name.text) };
  if (bound.thing?.kind === 'machine' && only !== undefined && others.length === 0)
    return { ...bound, thing: builtIn(only) };
  return bound;
}
