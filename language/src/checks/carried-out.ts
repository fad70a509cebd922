// Which clause of a thing's entry a statement carries out: `torque bolt` its torque, `fill oil` its fill.
import type { Thing } from '../names/model.js';
import type { BoundStatement } from '../names/statement.js';
import type { Make } from '../vocabulary/needs.js';

const BY_MAKE: ReadonlyMap<Make, string> = new Map([
  ['torqued', 'torque'],
  ['filled', 'fill'],
]);

/** Clauses that statements carry out. */
export const CARRIED_OUT: ReadonlySet<string> = new Set(BY_MAKE.values());

/** The word of the clause, undefined where the statement carries none out on the thing. */
export function clauseCarriedOut({ verb }: BoundStatement, { kind }: Thing): string | undefined {
  for (const make of verb.on[kind]?.makes ?? []) {
    const word = BY_MAKE.get(make);
    if (word !== undefined) return word;
  }
  return undefined;
}
