// release: let go what is latched, clipped or under spring load.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const release = defineVerb({
  word: 'release',
  on: {
    fastener: { needs: ['reachable', 'tight enough'], makes: ['loose'] },
    part: IN_REACH,
    connection: IN_REACH,
    place: IN_REACH,
    adjustment: IN_REACH,
    temporary: IN_REACH,
  },
  object: 'one or more',
  takesCount: true,
  clauses: {
    from: named(SPOTS, 'What it lets go of.'),
    with: named(AIDS, 'The tool, when it is worth naming.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Release {object}[ from {from}][ with {with}]',
    es: 'Soltar {object}[ de {from}][ con {with}]',
    fr: 'Libérer {object}[ (sur {from})][ avec {with}]',
    de: '{object}[ von {from}][ mit {with}] lösen',
  },
  done: 'released',
  docs: 'Lets go what is latched, clipped or under spring load. Fasteners stay in place, slack.',
  example: 'release belt-tensioner with tensioner-bar',
});
