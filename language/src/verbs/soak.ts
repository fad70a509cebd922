// soak: let a liquid work on something.
import { defineVerb } from '../vocabulary/verb.js';
import { IN_REACH, measured, named, WET_AIDS } from '../vocabulary/verb-shorthand.js';

export const soak = defineVerb({
  word: 'soak',
  on: { part: IN_REACH, fastener: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  clauses: {
    with: named(WET_AIDS, 'The liquid.'),
    in: named(['supply', 'fluid', 'temporary'], 'The bath.'),
    for: measured(['time'], 'How long.'),
  },
  minutes: 1,
  frees: true,
  readies: true,
  phrase: {
    en: 'Soak {object}[ with {with}][ in {in}][ for {for}]',
    es: 'Empapar {object}[ con {with}][ en {in}][ durante {for}]',
    fr: 'Imprégner {object}[ avec {with}][ dans {in}][ pendant {for}]',
    de: '{object}[ mit {with}][ in {in}][ {for} lang] einweichen',
  },
  done: 'soaked',
  docs: 'Lets penetrating oil or cleaner work on something. The time named is not counted as cure time.',
  example: 'soak hub-bolt with penetrating-oil, for 10 min',
});
