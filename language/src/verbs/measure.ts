// measure: take a reading.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named, RESULT, SPOTS } from '../vocabulary/verb-shorthand.js';

export const measure = defineVerb({
  word: 'measure',
  on: {
    limit: { needs: ['reachable'], makes: ['outcome'] },
    part: RESULT,
    fastener: RESULT,
    connection: RESULT,
    adjustment: RESULT,
    fluid: RESULT,
    circuit: RESULT,
    place: RESULT,
    tool: EVENT,
    supply: EVENT,
  },
  object: 'one or more',
  clauses: {
    at: { names: SPOTS, quantity: ['count'], docs: 'Where, or at how many places.' },
    with: named(AIDS, 'The measuring tool.'),
  },
  minutes: 2,
  phrase: {
    en: 'Measure {object}[ at {at}][ with {with}]',
    es: 'Medir {object}[ en {at}][ con {with}]',
    fr: 'Mesurer {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] messen[ ({at})]',
  },
  done: 'measured',
  docs: 'Takes a reading. Of a limit, the record gets a box with the allowed range, and `if below limit`, `if above limit` or `if outside limit` may follow.',
  example: 'measure disc-thickness, at 4 places',
});
