// The syntax tree of one file. It depends on the file's text only, is immutable, and holds every token with its
// place; missing pieces are undefined. Resolved names and types live in side tables elsewhere.
import type {
  CompoundProblem,
  Digits,
  Measure,
  NumberProblem,
  NumberReading,
  Rational,
  Unit,
  UnitReading,
} from '../quantity/index.js';
import type { Span } from '../text/span.js';
import type { Signal } from '../vocabulary/signals.js';

export type TokenKind =
  | 'day'
  | 'number'
  | 'count'
  | 'tolerance'
  | 'plus-minus'
  | 'unit'
  | 'string'
  | 'comma'
  | 'dash'
  | 'word'
  | 'hole'
  | 'junk';

/** A token of a line's code. `count` covers `4 of`; `hole` is `?`. */
export interface Token extends Span {
  readonly kind: TokenKind;
  readonly image: string;
}

/** A word used as a name. `text` is the name as written. */
export interface Name extends Span {
  readonly text: string;
}

/** Source text that a standard's own reader judges; quotes are stripped from `text`. `hole` when it is `?`. */
export interface Raw extends Span {
  readonly text: string;
  readonly hole: boolean;
  readonly quoted: boolean;
}

/**
 * A number as written, without unit. `hole` when it is `?`. With a `problem` (`1,5`, `1-1/2`) the value is the
 * likeliest of `readings`.
 */
export interface NumberNode extends Span {
  readonly value: Rational | undefined;
  /** Written with a minus sign, which a zero does not keep: the `-0` of `-0°30′`. */
  readonly negative: boolean;
  readonly digits: Digits | undefined;
  readonly hole: boolean;
  readonly problem: NumberProblem | undefined;
  readonly readings: readonly NumberReading[];
}

/**
 * One written unit. `readings` are what an ambiguous spelling may mean; `unit` is then the one that its place leaves,
 * or undefined when the writer must be asked. Neither when the unit is not known.
 */
export interface UnitNode extends Span {
  readonly spelling: string;
  readonly unit: Unit | undefined;
  readonly readings: readonly UnitReading[];
}

/**
 * A quantity as written. `measure` is absent when it is a hole, or the unit is missing, unknown or ambiguous, or
 * the parts do not go together. A unit that stands last serves those before it that have none.
 */
export interface MeasureNode extends Span {
  readonly hole: boolean;
  readonly form: 'amount' | 'range' | 'bound';
  readonly bound: 'least' | 'most' | undefined;
  /** The numbers in the order written: one for an amount or bound, two for a range, more for `1 h 40 min`. */
  readonly amounts: readonly AmountNode[];
  readonly measure: Measure | undefined;
  /** Why the parts of a compound amount do not go together. */
  readonly problem: CompoundProblem | undefined;
}

export interface AmountNode extends Span {
  readonly number: NumberNode;
  readonly unit: UnitNode | undefined;
  /** Tolerance as written, in the unit of the amount unless `percent`. */
  readonly tolerance: ToleranceNode | undefined;
}

/** A tolerance as written: in the unit of its amount, in its own, or in per cent of the value. */
export interface ToleranceNode extends Span {
  readonly plus: Rational;
  readonly minus: Rational;
  readonly digits: Digits | undefined;
  readonly percent: boolean;
  readonly unit: UnitNode | undefined;
  /** Written with its lower side first, `-5/+10`. */
  readonly reversed: boolean;
  /** Where its numbers end, before a unit of its own. */
  readonly numberEnd: number;
}

/** A torque or other specification: stages parted by `then`. */
export interface SpecNode extends Span {
  readonly stages: readonly { readonly back: boolean; readonly measure: MeasureNode }[];
}

/** A thing named as object or in a clause: `2 of cover-bolt`, `selector park`, `seal-puller or pry-bar`. */
export interface Item extends Span {
  readonly count: NumberNode | undefined;
  readonly name: Name;
  readonly value: Name | undefined;
  readonly alternatives: readonly Name[];
}

/** `axle heavy`, `engine petrol or diesel`, `year 2021 to 2025`. */
export interface GuardTerm extends Span {
  readonly option: Name;
  readonly values: readonly Name[];
  readonly years: { readonly from: number; readonly to: number } | undefined;
}

/** Terms that must all hold. `only` for `only when`. */
export interface Guard extends Span {
  readonly only: boolean;
  readonly terms: readonly GuardTerm[];
}

/** One clause of an entry or statement. `word` is the clause word, `of` for `4 of M12x1.5`, `bare` for a quantity that stands alone. */
export interface Clause extends Span {
  readonly word: string;
  readonly wordSpan: Span;
  readonly items: readonly Item[];
  readonly spec: SpecNode | undefined;
  readonly raw: Raw | undefined;
  readonly words: readonly Name[];
  /** For `4 of M12x1.5`. */
  readonly count: NumberNode | undefined;
  /** For `since disconnect battery-negative`. */
  readonly event: EventPattern | undefined;
}

/** What a rule or `since` looks for. */
export interface EventPattern extends Span {
  readonly verbs: readonly Name[];
  readonly target:
    | { readonly form: 'it' | 'vehicle' }
    | { readonly form: 'names'; readonly names: readonly Name[] }
    | {
        readonly form: 'any';
        readonly kind: Name;
        readonly mark: Name | undefined;
        readonly over: MeasureNode | undefined;
      }
    | undefined;
  readonly value: Name | undefined;
  /** `with hoist` and the like after the target. */
  readonly clauses: readonly Clause[];
}

/** `vehicle raised`, `battery-negative not connected`, `any temporary placed`. */
export interface StatePattern extends Span {
  readonly target: NonNullable<EventPattern['target']>;
  readonly not: boolean;
  readonly state: Name;
}

/** One clause of a rule, in its writer's order. */
export type RuleClause = Span & { readonly wordSpan: Span } & (
    | {
        readonly word: 'after' | 'before' | 'never' | 'every' | 'since';
        readonly pattern: EventPattern | undefined;
        readonly until?: 'next' | 'step ends';
      }
    | {
        readonly word: 'require';
        readonly pattern: EventPattern | undefined;
        readonly wait: MeasureNode | undefined;
        readonly message: Signal | 'hold' | undefined;
      }
    | { readonly word: 'while'; readonly state: StatePattern | undefined }
    | { readonly word: 'needs'; readonly clause: Clause | undefined }
    | { readonly word: 'at most once' }
  );

/** A reference in prose: `{hub-bolt torque}`, `{hub-bolt torque 2}`. */
export interface ProseReference extends Span {
  readonly name: Name;
  readonly attribute: Name | undefined;
  readonly index: number | undefined;
}

/** Text for the technician. `text` is the inline Markdown with line breaks; a blank line parts paragraphs. */
export interface Prose extends Span {
  readonly text: string;
  /** True when it stands below the line, under a colon that ends it. */
  readonly below: boolean;
  /** The physical lines it stands on, indent stripped: `text` is these joined by newlines. */
  readonly lines: readonly Span[];
  /** References, at offsets of the file. */
  readonly references: readonly ProseReference[];
}

/**
 * What every line has. Its span goes from its first character to the end of its text or block, so that nested
 * spans hold each other.
 */
export interface LineBase extends Span {
  /** First and last physical line of the code, zero-based; more than one when a comma goes on. */
  readonly firstLine: number;
  readonly lastLine: number;
  /** Columns of indent as written, a tab counting to the next multiple of four. */
  readonly indent: number;
  /** Level in the tree: 0 at the left edge. */
  readonly depth: number;
  /** The code, without indent, colon and text. */
  readonly code: Span;
  /** Offset of the colon that ends the code, when there is one. */
  readonly colon: number | undefined;
  readonly tokens: readonly Token[];
  /** The first word or phrase: keyword, verb or entry name. */
  readonly head: Name;
  readonly prose: Prose | undefined;
  readonly children: readonly Line[];
  /** True when the line has a finding of its own syntax. */
  readonly broken: boolean;
}

type L<Kind extends string, Fields = unknown> = LineBase & { readonly kind: Kind } & Readonly<Fields>;

export type ProcedureLine = L<'procedure', { number: Raw | undefined }>;
export type CatalogueLine = L<'catalogue'>;
export type UseLine = L<'use', { path: Raw | undefined }>;
export type AppliesLine = L<
  'applies',
  {
    vehicle: Name | undefined;
    from: NumberNode | undefined;
    to: NumberNode | undefined;
    guard: Guard | undefined;
  }
>;
export type SidesLine = L<'sides', { sides: readonly Name[] }>;
export type LabourLine = L<'labour', { time: MeasureNode | undefined; guard: Guard | undefined }>;
export type CrewLine = L<'crew', { count: NumberNode | undefined }>;
export type RevisionLine = L<'revision', { number: NumberNode | undefined; day: Name | undefined }>;
/** `status released by KM, TR on 2026-10-05`, `status draft`. */
export type StatusLine = L<
  'status',
  { status: Name | undefined; by: readonly Name[]; day: Name | undefined }
>;
/** `review 2027-10-05`. */
export type ReviewLine = L<'review', { day: Name | undefined }>;
export type SectionLine = L<'section', { word: string }>;
export type EntryLine = L<'entry', { name: Name }>;
/** Clauses on a line below an entry or a statement; a `when` at its end guards the whole line. */
export type ClausesLine = L<'clauses', { clauses: readonly Clause[]; guard: Guard | undefined }>;
/** Values of a condition. */
export type ValuesLine = L<'values', { values: readonly Name[] }>;
/** `forks lowered`, `axle-stands, rated 1500 kg`. */
export type PrerequisiteLine = L<
  'prerequisite',
  { name: Name; value: Name | undefined; clauses: readonly Clause[]; guard: Guard | undefined }
>;
export type OperationLine = L<'operation', { name: Name | undefined }>;
export type StepLine = L<'step'>;
/** A signal word; `reference` names a shared message. */
export type MessageLine = L<'message', { signal: Signal; reference: Name | undefined }>;
export type StatementLine = L<
  'statement',
  { verb: Name; items: readonly Item[]; clauses: readonly Clause[]; guard: Guard | undefined }
>;
export type PerformLine = L<
  'perform',
  { operation: Name | undefined; from: Raw | undefined; side: Name | undefined; guard: Guard | undefined }
>;
export type WhenLine = L<'when', { guard: Guard | undefined }>;
export type IfTest = 'below' | 'above' | 'outside' | 'within' | 'rejected' | 'needed';
export type IfLine = L<'if', { subject: Name | undefined; test: IfTest | undefined }>;
export type OtherwiseLine = L<'otherwise'>;
export type RepeatLine = L<'repeat', { times: MeasureNode | undefined }>;
/** Lines whose whole content is text: item, note, do, hold, stop, reject, expect, because, called. */
export const TEXT_HEADS = ['item', 'note', 'do', 'hold', 'stop', 'reject', 'expect', 'because'] as const;
export type TextHead = (typeof TEXT_HEADS)[number];
export type TextLine = L<'text', { word: TextHead }>;
export type PictureLine = L<'picture', { path: Raw | undefined }>;
export type ClipLine = L<'clip', { path: Raw | undefined; at: MeasureNode | undefined }>;
/** `accept F203, Q101: reason`; `subjects` names things it is limited to. */
export type AcceptLine = L<'accept', { codes: readonly Name[] }>;
export type RuleLine = L<'rule', { clauses: readonly RuleClause[] }>;
/** A line whose head is not known here; its block is kept and not read. */
export type UnreadLine = L<'unread'>;

export type Line =
  | ProcedureLine
  | CatalogueLine
  | UseLine
  | AppliesLine
  | SidesLine
  | LabourLine
  | CrewLine
  | RevisionLine
  | StatusLine
  | ReviewLine
  | SectionLine
  | EntryLine
  | ClausesLine
  | ValuesLine
  | PrerequisiteLine
  | OperationLine
  | StepLine
  | MessageLine
  | StatementLine
  | PerformLine
  | WhenLine
  | IfLine
  | OtherwiseLine
  | RepeatLine
  | TextLine
  | PictureLine
  | ClipLine
  | AcceptLine
  | RuleLine
  | UnreadLine;
export type LineKind = Line['kind'];

type FieldsOf<L> = L extends Line ? Omit<L, keyof LineBase> : never;
/** What the kinds of line have beyond what every line has. */
export type Fields = FieldsOf<Line>;

/** A comment line, kept for the formatter. */
export interface Comment extends Span {
  readonly line: number;
  readonly indent: number;
}

/** A parsed file. `lines` are the top-level lines; blocks hang below their heads. */
export interface Tree {
  readonly text: string;
  readonly lines: readonly Line[];
  readonly comments: readonly Comment[];
}
