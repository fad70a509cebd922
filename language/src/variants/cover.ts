// A condition in few words: a short list of terms that together hold exactly where the condition holds.
import { ALWAYS, type Condition, type Diagrams, NEVER } from './diagrams.js';

/** Values allowed for some variables; all others are free. */
export type Term = ReadonlyMap<number, readonly number[]>;

/**
 * Terms whose union is the condition within `domain` (combinations outside it never occur, so a term may cover
 * them). Each term is as wide as it can be; terms are taken until all is covered, or are too many for anyone to read. An
 * empty list means never.
 */
export function coverOf(d: Diagrams, condition: Condition, domain: Condition = ALWAYS): readonly Term[] {
  const outside = d.not(domain);
  const wide = d.or(condition, outside);
  const terms: Term[] = [];
  let left = d.and(condition, domain);
  while (left !== NEVER && terms.length < MOST_TERMS) {
    const choice = d.some(left);
    if (!choice) break;
    const term = widen(d, new Map([...choice].map(([v, i]) => [v, [i]])), wide);
    terms.push(term);
    left = d.minus(left, conditionOf(d, term));
  }
  return terms;
}

const MOST_TERMS = 64;

/** Drops or widens variables one by one while the term still lies in the condition. */
function widen(d: Diagrams, start: Map<number, readonly number[]>, wide: Condition): Term {
  const term = new Map(start);
  for (const [variable, values] of start) {
    term.delete(variable);
    if (d.implies(conditionOf(d, term), wide)) continue;
    let kept = values;
    for (let i = 0; i < d.arity(variable); i++) {
      if (kept.includes(i)) continue;
      const tried = [...kept, i].sort((a, b) => a - b);
      term.set(variable, tried);
      if (d.implies(conditionOf(d, term), wide)) kept = tried;
    }
    term.set(variable, kept);
  }
  return term;
}

function conditionOf(d: Diagrams, term: Term): Condition {
  let result: Condition = ALWAYS;
  for (const [variable, values] of term) {
    result = d.and(result, d.where({ index: variable, arity: d.arity(variable) }, values));
  }
  return result;
}
