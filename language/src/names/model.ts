// What one file declares, read from its tree alone: things with their clauses, operations, rules, phases of work.
// Names in clauses are not resolved here; that needs the imports and happens per procedure in scope.ts.
import type {
  AppliesLine,
  CatalogueLine,
  Clause,
  ClausesLine,
  EntryLine,
  Guard,
  LabourLine,
  Line,
  Name,
  OperationLine,
  PrerequisiteLine,
  ProcedureLine,
  RevisionLine,
  SectionLine,
  StatusLine,
  TextLine,
  Tree,
  UseLine,
} from '../syntax/tree.js';
import { perSideByDefault, type ThingKind } from '../vocabulary/kinds.js';

/** One clause of a thing with the guard of its line. */
export interface ThingClause {
  readonly clause: Clause;
  readonly guard: Guard | undefined;
  readonly line: ClausesLine;
}

/** Anything with a name: a declared entry, an operation, or a built-in such as `vehicle`. */
export interface Thing {
  /** Unique over the library: declaring file and name. */
  readonly id: string;
  readonly kind: ThingKind;
  readonly name: string;
  /** Words for people; the entry's title. */
  readonly title: string;
  readonly file: string;
  /** Undefined for built-ins. */
  readonly line: EntryLine | OperationLine | undefined;
  readonly clauses: ReadonlyMap<string, readonly ThingClause[]>;
  /** Conditions: their values in order, the first being where it rests. */
  readonly values: readonly Name[];
  readonly marks: readonly string[];
  /** Guards of `only when`: the thing exists only there. */
  readonly exists: readonly Guard[];
}

export interface FileModel {
  readonly path: string;
  readonly tree: Tree;
  readonly kind: 'procedure' | 'catalogue' | 'other';
  readonly head: ProcedureLine | CatalogueLine | undefined;
  /** Procedure number such as `FH-12`; undefined when absent or `?`. */
  readonly number: string | undefined;
  readonly title: string;
  readonly uses: readonly UseLine[];
  readonly applies: readonly AppliesLine[];
  readonly sides: readonly string[];
  readonly labour: readonly LabourLine[];
  readonly revisions: readonly RevisionLine[];
  readonly status: StatusLine | undefined;
  readonly things: readonly Thing[];
  readonly operations: readonly Thing[];
  readonly prerequisites: readonly (PrerequisiteLine | TextLine)[];
  /** Phases of work in the order written. */
  readonly work: readonly SectionLine[];
  readonly lines: readonly Line[];
}

/** The clauses of a thing with this word, in the order written. */
export function clausesOf(thing: Thing, word: string): readonly ThingClause[] {
  return thing.clauses.get(word) ?? [];
}

/** Whether the thing has a clause with this word. */
export function hasClause(thing: Thing, word: string): boolean {
  return thing.clauses.has(word);
}

/** Whether a vehicle with two worked sides has it twice. */
export function isEachSide(thing: Thing): boolean {
  if (hasClause(thing, 'once')) return false;
  return hasClause(thing, 'each side') || perSideByDefault(thing.kind) === 'each side';
}

/** Where the thing's name stands in its declaration. */
export function nameSpan(thing: Thing): Name | undefined {
  return thing.line?.kind === 'entry' ? thing.line.name : thing.line?.name;
}
