// A house rule as an automaton that runs along with the state: one file for each of the four heads.

import type { Machine } from '../state/machine.js';
import type { Listener } from '../state/run.js';
import { ban } from './ban.js';
import { dutyAfter } from './duty-after.js';
import { dutyBefore } from './duty-before.js';
import { everyLine } from './every.js';
import type { Rule } from './rule-model.js';
import type { Teller } from './teller.js';

export interface Automaton extends Listener {
  /** Forgets the outcome of a test that no later line asks for. */
  forget(variable: number): void;
}

export function automatonOf(m: Machine, rule: Rule, teller: Teller): Automaton {
  switch (rule.form.head) {
    case 'after':
      return dutyAfter(m, rule.form, teller);
    case 'before':
      return dutyBefore(m, rule, rule.form, teller);
    case 'never':
      return ban(m, rule.form, teller);
    case 'every':
      return everyLine(m, rule.form, teller);
  }
}
