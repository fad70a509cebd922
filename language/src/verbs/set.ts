// set: bring a condition to one of its values.

import { VALUE_PHRASES } from '../vocabulary/value-phrases.js';
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named } from '../vocabulary/verb-shorthand.js';

export const set = defineVerb({
  word: 'set',
  on: { condition: { needs: ['value declared'], makes: ['set'] } },
  object: 'one or more',
  takesValue: true,
  clauses: {
    with: named(AIDS, 'The tool, when one is needed.'),
  },
  minutes: 0.2,
  phrase: {
    en: 'Set {object} to {value}[ with {with}]',
    es: 'Poner {object} en {value}[ con {with}]',
    fr: 'Mettre {object} sur {value}[ avec {with}]',
    de: '{object}[ mit {with}] auf {value} stellen',
  },
  phraseForValue: VALUE_PHRASES,
  done: 'set',
  docs: 'Brings a condition to one of its declared values. At the end it must be back at its first value. Setting it to what it is already means: make sure.',
  example: 'set selector park',
});
