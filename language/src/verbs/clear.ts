// clear: delete stored trouble codes.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named } from '../vocabulary/verb-shorthand.js';

export const clear = defineVerb({
  word: 'clear',
  on: { machine: EVENT, part: EVENT },
  machines: ['codes'],
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The scan tool.'),
  },
  minutes: 1,
  isAboutCodes: true,
  phrase: {
    en: 'Clear {object}[ with {with}]',
    es: 'Borrar {object}[ con {with}]',
    fr: 'Effacer {object}[ avec {with}]',
    de: '{object}[ mit {with}] löschen',
  },
  done: 'cleared',
  docs: 'Deletes stored trouble codes, or those of one control unit. `record codes` comes first.',
  example: 'clear codes with scan-tool',
});
