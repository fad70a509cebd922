// Which kinds of quantity a place of a file wants: the parser reads doubtful units by it, checks compare with it.
import type { QuantityKind } from '../quantity/dimension.js';
import { ENTRY_CLAUSE_BY_WORD, STEP_CLAUSE_BY_WORD } from './clauses.js';
import type { VerbDef } from './verb.js';

export interface Expected {
  /** Undefined where anything may be measured, as in a limit. */
  readonly kinds: readonly QuantityKind[] | undefined;
  /** True where a number needs no unit. */
  readonly unitless: boolean;
}

export const ANYTHING: Expected = { kinds: undefined, unitless: false };
export const A_TIME: Expected = { kinds: ['time'], unitless: false };
export const A_COUNT: Expected = { kinds: ['count'], unitless: true };
export const A_MASS: Expected = { kinds: ['mass'], unitless: false };

/** What a clause of an entry wants. */
export function expectedInEntry(word: string): Expected {
  const def = ENTRY_CLAUSE_BY_WORD.get(word);
  return { kinds: def?.quantity, unitless: def?.unitless === true };
}

/** What a clause of a statement wants, `bare` for a quantity that stands alone. */
export function expectedInStatement(verb: VerbDef | undefined, word: string): Expected {
  const slot = word === 'bare' ? verb?.bare : verb?.clauses[word];
  return { kinds: slot?.quantity ?? STEP_CLAUSE_BY_WORD.get(word)?.quantity, unitless: false };
}
