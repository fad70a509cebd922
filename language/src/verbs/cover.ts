// cover: keep dirt or water off an opening.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named } from '../vocabulary/verb-shorthand.js';

export const cover = defineVerb({
  word: 'cover',
  on: { part: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The sheet, cap or tape.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Cover {object}[ with {with}]',
    es: 'Cubrir {object}[ con {with}]',
    fr: 'Couvrir {object}[ avec {with}]',
    de: '{object}[ mit {with}] abdecken',
  },
  done: 'covered',
  docs: 'Keeps dirt, water or sparks off. What must not be left in is declared under `temporary` and placed.',
  example: 'cover alternator with plastic-sheet',
});
