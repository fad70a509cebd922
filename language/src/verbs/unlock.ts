// unlock: let go what was locked.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, IN_REACH, named } from '../vocabulary/verb-shorthand.js';

export const unlock = defineVerb({
  word: 'unlock',
  on: {
    part: IN_REACH,
    fastener: IN_REACH,
    connection: IN_REACH,
    adjustment: IN_REACH,
    condition: IN_REACH,
    place: IN_REACH,
    machine: EVENT,
  },
  machines: ['engine', 'suspension', 'vehicle'],
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The tool.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Unlock {object}[ with {with}]',
    es: 'Desbloquear {object}[ con {with}]',
    fr: 'Débloquer {object}[ avec {with}]',
    de: '{object}[ mit {with}] entriegeln',
  },
  done: 'unlocked',
  docs: 'Lets go what a lock, tab or pin held.',
  example: 'unlock crankshaft',
});
