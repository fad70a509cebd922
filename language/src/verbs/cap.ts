// cap: close an open line with a cap.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named } from '../vocabulary/verb-shorthand.js';

export const cap = defineVerb({
  word: 'cap',
  on: { connection: { needs: ['disconnected'], makes: ['capped'] } },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The cap.'),
  },
  minutes: 0.3,
  phrase: {
    en: 'Cap {object}[ with {with}]',
    es: 'Tapar {object}[ con {with}]',
    fr: 'Obturer {object}[ avec {with}]',
    de: '{object}[ mit {with}] verschließen',
  },
  done: 'capped',
  docs: 'Closes the end of an open line so that no dirt gets in and no fluid out. Both ends, where there are two.',
  example: 'cap supply-hose',
});
