// dry: take moisture off.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const dry = defineVerb({
  word: 'dry',
  on: { place: IN_REACH, part: IN_REACH, fastener: IN_REACH, connection: IN_REACH, circuit: IN_REACH },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The cloth or air line.'),
    for: measured(['time'], 'How long.'),
  },
  minutes: 1,
  phrase: {
    en: 'Dry {object}[ with {with}][ for {for}]',
    es: 'Secar {object}[ con {with}][ durante {for}]',
    fr: 'Sécher {object}[ avec {with}][ pendant {for}]',
    de: '{object}[ mit {with}][ {for} lang] trocknen',
  },
  done: 'dried',
  docs: 'Takes moisture or cleaner off before the next thing goes on.',
  example: 'dry knuckle-bore with lint-free-cloth',
});
