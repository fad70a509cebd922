// balance: take imbalance out of a wheel or shaft.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named } from '../vocabulary/verb-shorthand.js';

export const balance = defineVerb({
  word: 'balance',
  on: { part: IN_REACH },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The balancer.'),
  },
  minutes: 8,
  phrase: {
    en: 'Balance {object}[ with {with}]',
    es: 'Equilibrar {object}[ con {with}]',
    fr: 'Équilibrer {object}[ avec {with}]',
    de: '{object}[ mit {with}] auswuchten',
  },
  done: 'balanced',
  docs: 'Takes the imbalance out of a wheel or a shaft.',
  example: 'balance wheel with wheel-balancer',
});
