// plug: close an opening with a plug.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named } from '../vocabulary/verb-shorthand.js';

export const plug = defineVerb({
  word: 'plug',
  on: { connection: { needs: ['disconnected'], makes: ['capped'] }, place: IN_REACH, part: IN_REACH },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The plug.'),
  },
  minutes: 0.3,
  phrase: {
    en: 'Plug {object}[ with {with}]',
    es: 'Taponar {object}[ con {with}]',
    fr: 'Boucher {object}[ avec {with}]',
    de: '{object}[ mit {with}] verschließen',
  },
  done: 'plugged',
  docs: 'Closes an opening with a plug. On a connection it counts as a cap; a plug in a place or part is better declared under `temporary`, so that it cannot be forgotten.',
  example: 'plug return-line with rubber-plug',
});
