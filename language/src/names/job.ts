// One procedure with everything its names mean: scope, combinations, relations between things and their inverses.
import { numberOf } from '../quantity/index.js';
import type { Clause, Guard, Item, Line } from '../syntax/tree.js';
import { once } from '../text/once.js';
import { ALWAYS, type Condition } from '../variants/diagrams.js';
import { type GuardProblem, type Universe, universeOf, type VehicleFacts } from '../variants/universe.js';
import { tighteningCount } from './figures.js';
import { clausesOf, type FileModel, type Thing, type ThingClause } from './model.js';
import { type Imports, type Scope, scopeOf } from './scope.js';
import { keepBound } from './statement.js';

/** `of` stands in a relation to `target`, on the combinations of `when`. */
export interface Relation {
  readonly of: Thing;
  readonly target: Thing;
  /** `held by 1 of cover-bolt`. */
  readonly count: number | undefined;
  /** `held by parking-brake applied`. */
  readonly value: string | undefined;
  readonly when: Condition;
  readonly item: Item;
  readonly clause: Clause;
}

export interface Job {
  readonly file: FileModel;
  readonly scope: Scope;
  readonly universe: Universe;
  /** Scopes of the procedures it performs operations from, itself first. */
  readonly scopes: readonly Scope[];
  readonly imports: Imports;
  readonly guardProblems: readonly (GuardProblem & { readonly file: string })[];
  /** Where the thing exists. */
  exists(thing: Thing): Condition;
  /** Where a guard of this file holds. */
  where(guard: Guard | undefined): Condition;
  relations(thing: Thing, word: string): readonly Relation[];
  /** Relations that point at the thing. */
  inverse(thing: Thing, word: string): readonly Relation[];
  /** Number of fasteners in a set; 1 when it is not known. */
  count(thing: Thing): number;
}

const NONE: readonly Relation[] = [];

/** `before`: the job of the same file before an edit. What it knows of lines and names that are still there holds. */
export function jobOf(file: FileModel, imports: Imports, before?: Job): Job {
  const scope = scopeOf(file, imports, before?.scope.names);
  if (before && before.scope !== scope) keepBound(before.scope, scope);
  const scopes = [scope, ...performedFrom(file, imports).map((f) => scopeOf(f, imports))];
  const vehicles = vehiclesOf(file, scope);
  const guards = scopes
    .flatMap((s) => [...s.names.values()].flatMap(guardsOf))
    .concat(scopes.flatMap((s) => guardsIn(s.file)));
  const universe = universeOf(file, vehicles, guards);
  const guardProblems: (GuardProblem & { file: string })[] = [];
  reportGuards(file, universe, guardProblems);

  const existing = new Map<Thing, Condition>();
  const exists = (thing: Thing): Condition => {
    if (thing.exists.length === 0) return ALWAYS;
    const known = existing.get(thing);
    if (known !== undefined) return known;
    let result: Condition = ALWAYS;
    for (const guard of thing.exists) result = universe.diagrams.and(result, universe.condition(guard));
    existing.set(thing, result);
    return result;
  };

  const relationsByWord = new Map<string, Map<Thing, Relation[]>>();
  const relations = (thing: Thing, word: string): readonly Relation[] => {
    // Most things have no clause of most words: they are not worth a place in the table.
    const clauses = thing.clauses.get(word);
    if (!clauses) return NONE;
    let byThing = relationsByWord.get(word);
    if (!byThing) {
      byThing = new Map();
      relationsByWord.set(word, byThing);
    }
    const known = byThing.get(thing);
    if (known) return known;
    const found: Relation[] = [];
    byThing.set(thing, found);
    for (const { clause, guard } of clauses) {
      for (const item of clause.items) {
        const target = resolve(scopes, item.name.text);
        if (!target) continue;
        found.push({
          of: thing,
          target,
          count: item.count?.value === undefined ? undefined : numberOf(item.count.value),
          value: item.value?.text,
          when: universe.diagrams.and(exists(thing), universe.condition(guard)),
          item,
          clause,
        });
      }
    }
    return found;
  };

  const inverses = new Map<string, Map<Thing, Relation[]>>();
  const inverse = (thing: Thing, word: string): readonly Relation[] => {
    let byTarget = inverses.get(word);
    if (!byTarget) {
      byTarget = new Map();
      inverses.set(word, byTarget);
      for (const of of allThings(scopes)) {
        for (const relation of relations(of, word)) {
          const list = byTarget.get(relation.target);
          if (list) list.push(relation);
          else byTarget.set(relation.target, [relation]);
        }
      }
    }
    return byTarget.get(thing) ?? NONE;
  };

  return {
    file,
    scope,
    scopes,
    imports,
    universe,
    guardProblems,
    exists,
    where: (guard) => universe.condition(guard),
    relations,
    inverse,
    count: tighteningCount,
  };
}

/** A name in the procedure's own scope, else in the scope of a procedure it performs from. */
export function resolve(scopes: readonly Scope[], name: string): Thing | undefined {
  for (const scope of scopes) {
    const thing = scope.resolve(name);
    if (thing) return thing;
  }
  return undefined;
}

const declared = new WeakMap<readonly Scope[], readonly Thing[]>();

/** Every declared thing once. */
export function allThings(scopes: readonly Scope[]): readonly Thing[] {
  let things = declared.get(scopes);
  if (!things) {
    things = [...new Map(scopes.flatMap((s) => [...s.names.values()]).map((t) => [t.id, t])).values()];
    declared.set(scopes, things);
  }
  return things;
}

/** Every line of a block and of the blocks below it. */
export function everyLine(lines: readonly Line[]): Line[] {
  const found: Line[] = [];
  const stack = [...lines].reverse();
  for (let line = stack.pop(); line; line = stack.pop()) {
    found.push(line);
    for (let i = line.children.length - 1; i >= 0; i--) {
      const child = line.children[i];
      if (child) stack.push(child);
    }
  }
  return found;
}

/** Every line of a file, in the order written. */
export const linesOf = once((file: FileModel): readonly Line[] => file.lines.flatMap(linesBelow));

/** Every line of its work, in the order written. */
export const linesOfWork = once((file: FileModel): readonly Line[] => file.work.flatMap(linesBelow));

/** The lines of one kind of a file, in the order written. */
export function linesOfKind<Kind extends Line['kind']>(
  file: FileModel,
  kind: Kind,
): readonly Extract<Line, { readonly kind: Kind }>[] {
  const found: Line[] = [];
  for (const top of file.lines) for (const line of kindsBelow(top).get(kind) ?? []) found.push(line);
  return found as Extract<Line, { readonly kind: Kind }>[];
}

const kindsBelow = once((top: Line): ReadonlyMap<Line['kind'], readonly Line[]> => {
  const kinds = new Map<Line['kind'], Line[]>();
  for (const line of linesBelow(top)) {
    const list = kinds.get(line.kind);
    if (list) list.push(line);
    else kinds.set(line.kind, [line]);
  }
  return kinds;
});

/** A line of the left edge and all below it: the same until something in it is edited. */
const linesBelow = once((line: Line): readonly Line[] => everyLine([line]));

/** The guards written in a line, its clauses included. */
export function guardOfLine(line: Line): Guard | undefined {
  return 'guard' in line ? line.guard : undefined;
}

/** The guards written in a file. */
export const guardsIn = once((file: FileModel): readonly Guard[] => file.lines.flatMap(guardsBelow));

const guardsBelow = once((top: Line): readonly Guard[] => {
  const guards: Guard[] = [];
  for (const line of linesBelow(top)) {
    const guard = guardOfLine(line);
    if (guard) guards.push(guard);
  }
  return guards;
});

const guardsOf = once((thing: Thing): readonly Guard[] => {
  const own: (Guard | undefined)[] = [...thing.exists];
  for (const list of thing.clauses.values()) for (const clause of list) own.push(clause.guard);
  return own.filter((g) => g !== undefined);
});

function reportGuards(
  file: FileModel,
  universe: Universe,
  problems: (GuardProblem & { file: string })[],
): void {
  if (file.kind !== 'procedure') return;
  for (const guard of guardsIn(file))
    universe.condition(guard, (p) => problems.push({ ...p, file: file.path }));
}

/** The procedures whose operations are performed, and the ones those perform from in turn. */
function performedFrom(file: FileModel, imports: Imports): FileModel[] {
  const found = new Map<string, FileModel>();
  const visit = (from: FileModel): void => {
    for (const line of linesOfWork(from)) {
      if (line.kind !== 'perform' || !line.from || line.from.hole) continue;
      const callee = imports.numbered(line.from.text);
      if (!callee || callee === file || found.has(callee.path)) continue;
      found.set(callee.path, callee);
      visit(callee);
    }
  };
  visit(file);
  return [...found.values()];
}

function vehiclesOf(file: FileModel, scope: Scope): VehicleFacts[] {
  const facts: VehicleFacts[] = [];
  for (const line of file.applies) {
    const thing = line.vehicle ? scope.resolve(line.vehicle.text) : undefined;
    if (thing?.kind !== 'vehicle' || facts.some((f) => f.name === thing.name)) continue;
    const years = yearsOf(clausesOf(thing, 'years'));
    facts.push({
      name: thing.name,
      options: clausesOf(thing, 'option').map(({ clause }) => {
        const [option, ...values] = clause.words;
        return { name: option?.text ?? '', values: values.map((v) => v.text) };
      }),
      from: line.from?.value === undefined ? years?.from : numberOf(line.from.value),
      to: line.to?.value === undefined ? years?.to : numberOf(line.to.value),
    });
  }
  return facts;
}

/** The model years that a vehicle's entry says. */
export function yearsOf(clauses: readonly ThingClause[]): { from: number; to: number } | undefined {
  const amounts = clauses[0]?.clause.spec?.stages[0]?.measure.amounts ?? [];
  const [from, to] = amounts.map((a) =>
    a.number.value === undefined ? undefined : numberOf(a.number.value),
  );
  return from === undefined ? undefined : { from, to: to ?? from };
}
