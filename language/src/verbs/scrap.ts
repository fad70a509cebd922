// scrap: make sure that a part is not used again.
import { defineVerb } from '../vocabulary/verb.js';
import { EVENT, named } from '../vocabulary/verb-shorthand.js';

export const scrap = defineVerb({
  word: 'scrap',
  on: { part: EVENT, fastener: EVENT, fluid: EVENT, supply: EVENT },
  object: 'one or more',
  clauses: {
    into: named(['tool', 'temporary', 'place'], 'The bin.'),
  },
  minutes: 0.3,
  bothSides: 'one line',
  isOfOld: true,
  phrase: {
    en: 'Scrap {object}[ into {into}]',
    es: 'Desechar {object}[ en {into}]',
    fr: 'Mettre au rebut {object}[ dans {into}]',
    de: '{object}[ in {into}] entsorgen',
  },
  done: 'scrapped',
  docs: 'Says that a part or fluid is not used again and goes where local codes want it.',
  example: 'scrap hub-bolt',
});
