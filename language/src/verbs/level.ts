// level: bring something to the horizontal.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const level = defineVerb({
  word: 'level',
  on: { part: IN_REACH, place: IN_REACH, machine: EVENT },
  machines: ['vehicle'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where.'),
    with: named(AIDS, 'The spirit level or jack.'),
  },
  minutes: 2,
  phrase: {
    en: 'Level {object}[ at {at}][ with {with}]',
    es: 'Nivelar {object}[ en {at}][ con {with}]',
    fr: 'Mettre de niveau {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] waagerecht ausrichten[ ({at})]',
  },
  done: 'levelled',
  docs: 'Brings the vehicle or a part to the horizontal, as a fluid level asks. To read a fluid, write `check-level`.',
  example: 'level vehicle with lift',
});
