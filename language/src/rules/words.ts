// Patterns of rules in the words they were written in, for messages and inserted lines.
import { minutes } from '../names/figures.js';
import type { Thing } from '../names/model.js';
import type { Clause, EventPattern, StatePattern } from '../syntax/tree.js';
import type { Required } from './rule-model.js';

type Target = NonNullable<EventPattern['target']>;

/** `pump brake-pedal`, `disconnect any connection marked restraint`; `it` is named when it is known. */
export function patternWords({ verbs, target, value, clauses }: EventPattern, it?: Thing): string {
  return [
    verbs.map((v) => v.text).join(' or '),
    target ? targetWords(target, it) : '',
    value?.text ?? '',
    ...clauses.map(clauseWords),
  ]
    .filter((w) => w !== '')
    .join(' ');
}

function targetWords(target: Target, it?: Thing): string {
  switch (target.form) {
    case 'it':
      return it?.name ?? 'it';
    case 'vehicle':
      return 'vehicle';
    case 'names':
      return target.names.map((n) => n.text).join(' or ');
    case 'any':
      return `any ${target.kind.text}${target.mark ? ` marked ${target.mark.text}` : ''}`;
  }
}

export function stateWordsOf({ target, not, state }: StatePattern): string {
  return `${targetWords(target)}${not ? ' not' : ''} ${state.text}`;
}

/** `with hoist`, `at ride height`. */
export function clauseWords(clause: Clause): string {
  return [clause.word, clause.items.map((i) => i.name.text).join(', ')].filter((w) => w !== '').join(' ');
}

/** What is asked for, as a line would say it. */
export function requiredWords(required: Required, it?: Thing): string {
  switch (required.form) {
    case 'act':
      return patternWords(required.pattern, it);
    case 'wait':
      return `wait ${timeWords(minutes(required.time) ?? 0)}`;
    case 'message':
      return required.message;
  }
}

export function timeWords(time: number): string {
  return time >= 60 && time % 60 === 0 ? `${time / 60} h` : `${Math.ceil(time)} min`;
}
