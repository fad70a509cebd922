// flush: rinse a circuit or a passage through.
import { defineVerb } from '../vocabulary/verb.js';
import { IN_REACH, measured, named, SPOTS, WET_AIDS } from '../vocabulary/verb-shorthand.js';

export const flush = defineVerb({
  word: 'flush',
  on: { circuit: IN_REACH, fluid: IN_REACH, part: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  bare: measured(['volume', 'mass'], 'How much runs through.'),
  clauses: {
    at: named(SPOTS, 'Where it goes in or comes out.'),
    with: named(WET_AIDS, 'The fluid or machine.'),
    for: measured(['time'], 'How long.'),
  },
  minutes: 10,
  phrase: {
    en: 'Flush {object}[, {amount},][ at {at}][ with {with}][ for {for}]',
    es: 'Lavar por dentro {object}[, {amount},][ por {at}][ con {with}][ durante {for}]',
    fr: 'Rincer {object}[, {amount},][ ({at})][ avec {with}][ pendant {for}]',
    de: '{object}[, {amount},][ mit {with}][ {for} lang] spülen[ ({at})]',
  },
  done: 'flushed',
  docs: 'Rinses a circuit, part or passage until what comes out is clean. It does not fill or bleed.',
  example: 'flush radiator with water, for 5 min',
});
