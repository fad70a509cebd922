// A house rule read from its lines: one of four heads with what it asks for.
import type { Thing } from '../names/model.js';
import type { Clause, EventPattern, MeasureNode, RuleClause, StatePattern } from '../syntax/tree.js';
import type { Signal } from '../vocabulary/signals.js';

export type Required =
  | { readonly form: 'act'; readonly pattern: EventPattern }
  | { readonly form: 'wait'; readonly time: MeasureNode }
  | { readonly form: 'message'; readonly message: Signal | 'hold' };

export type RuleForm =
  | {
      readonly head: 'after';
      readonly pattern: EventPattern;
      readonly required: Required;
      readonly until: EventPattern | 'next' | 'step ends' | undefined;
    }
  | {
      readonly head: 'before';
      readonly pattern: EventPattern;
      readonly required: Required;
      readonly since: EventPattern | undefined;
    }
  | { readonly head: 'never'; readonly pattern: EventPattern; readonly state: StatePattern }
  | {
      readonly head: 'every';
      readonly pattern: EventPattern;
      readonly needs: Clause | undefined;
      readonly once: boolean;
    };

export interface Rule {
  readonly thing: Thing;
  readonly form: RuleForm;
  /** From the starter pack. */
  readonly starter: boolean;
}

/** Whether what is asked for is about the very thing that the rule matched. */
export function isAboutIt(required: Required): boolean {
  return required.form === 'act' && required.pattern.target?.form === 'it';
}

/** The things that the rule asks to have something done to, by name. */
export function askedNames(required: Required): readonly string[] {
  return required.form === 'act' && required.pattern.target?.form === 'names'
    ? required.pattern.target.names.map((n) => n.text)
    : [];
}

/** Undefined when the lines do not make a whole rule; the rule check tells what is missing. */
export function readRule(thing: Thing, starter: boolean): Rule | undefined {
  const clauses = (thing.line?.children ?? []).flatMap((l) => (l.kind === 'rule' ? l.clauses : []));
  const form = formOf(clauses);
  return form ? { thing, form, starter } : undefined;
}

function formOf(clauses: readonly RuleClause[]): RuleForm | undefined {
  const [head, ...tail] = clauses;
  if (!head || !('pattern' in head) || !head.pattern) return undefined;
  const { pattern } = head;
  const required = requiredIn(tail);
  const find = <W extends RuleClause['word']>(word: W) =>
    tail.find((c): c is Extract<RuleClause, { word: W }> => c.word === word);
  switch (head.word) {
    case 'after': {
      const before = tail.find((c) => c.word === 'before');
      const until =
        before && 'until' in before && before.until
          ? before.until
          : before && 'pattern' in before
            ? before.pattern
            : undefined;
      return required ? { head: 'after', pattern, required, until } : undefined;
    }
    case 'before': {
      const since = tail.find((c) => c.word === 'since');
      return required
        ? {
            head: 'before',
            pattern,
            required,
            since: since && 'pattern' in since ? since.pattern : undefined,
          }
        : undefined;
    }
    case 'never': {
      const state = find('while')?.state;
      return state ? { head: 'never', pattern, state } : undefined;
    }
    case 'every': {
      const needs = find('needs')?.clause;
      const once = find('at most once') !== undefined;
      return needs || once ? { head: 'every', pattern, needs, once } : undefined;
    }
    default:
      return undefined;
  }
}

function requiredIn(tail: readonly RuleClause[]): Required | undefined {
  const clause = tail.find((c): c is Extract<RuleClause, { word: 'require' }> => c.word === 'require');
  if (!clause) return undefined;
  if (clause.wait) return { form: 'wait', time: clause.wait };
  if (clause.message) return { form: 'message', message: clause.message };
  return clause.pattern ? { form: 'act', pattern: clause.pattern } : undefined;
}
