// reset: bring a counter or reminder back to its start.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named } from '../vocabulary/verb-shorthand.js';

export const reset = defineVerb({
  word: 'reset',
  on: { part: EVENT, place: EVENT, adjustment: EVENT, condition: EVENT, machine: EVENT },
  machines: ['vehicle', 'engine', 'odometer'],
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The scan tool.'),
  },
  minutes: 1,
  phrase: {
    en: 'Reset {object}[ with {with}]',
    es: 'Restablecer {object}[ con {with}]',
    fr: 'Réinitialiser {object}[ avec {with}]',
    de: '{object}[ mit {with}] zurücksetzen',
  },
  done: 'reset',
  docs: 'Brings a counter, reminder or latch back to its start. Trouble codes take `clear`.',
  example: 'reset service-reminder',
});
