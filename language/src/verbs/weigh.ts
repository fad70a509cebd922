// weigh: find how much something weighs.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named } from '../vocabulary/verb-shorthand.js';

export const weigh = defineVerb({
  word: 'weigh',
  on: { part: EVENT, fluid: EVENT, supply: EVENT, temporary: EVENT, tool: EVENT },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The scale.'),
  },
  minutes: 1,
  records: 'objects',
  phrase: {
    en: 'Weigh {object}[ with {with}]',
    es: 'Pesar {object}[ con {with}]',
    fr: 'Peser {object}[ avec {with}]',
    de: '{object}[ mit {with}] wiegen',
  },
  done: 'weighed',
  docs: 'Finds the mass of a part or of a fluid that was taken out, for the record.',
  example: 'weigh ac-refrigerant',
});
