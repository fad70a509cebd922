// check-level: see whether the fluid is at its mark.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const checkLevel = defineVerb({
  word: 'check-level',
  on: { fluid: { needs: ['holds fluid', 'fill open', 'settled'], makes: ['levelled', 'outcome'] } },
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'The mark or opening.'),
    with: named(AIDS, 'The dipstick or gauge.'),
  },
  minutes: 1,
  phrase: {
    en: 'Check the level of {object}[ at {at}][ with {with}]',
    es: 'Comprobar el nivel: {object}[ en {at}][ con {with}]',
    fr: 'Contrôler le niveau : {object}[ ({at})][ avec {with}]',
    de: 'Füllstand prüfen: {object}[ ({at})][ mit {with}]',
  },
  done: 'checked for level',
  docs: 'Reads the level when the fluid has settled. `if below limit` may follow.',
  example: 'check-level drive-oil',
});
