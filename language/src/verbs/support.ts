// support: put weight on stands.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const support = defineVerb({
  word: 'support',
  on: { machine: { needs: ['raised'], makes: ['supported'] }, part: IN_REACH, place: IN_REACH },
  machines: ['vehicle'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'The support points.'),
    on: named(['tool', 'temporary', 'place'], 'What carries it.'),
    with: named(AIDS, 'The stands, beam or jack.'),
  },
  minutes: 2,
  suits: ['rated'],
  phrase: {
    en: 'Support {object}[ on {on}][ at {at}][ with {with}]',
    es: 'Apoyar {object}[ sobre {on}][ en {at}][ con {with}]',
    fr: 'Soutenir {object}[ sur {on}][ avec {with}][ ({at})]',
    de: '{object}[ auf {on}][ mit {with}] abstützen[ ({at})]',
  },
  done: 'supported',
  docs: 'Puts the raised vehicle on stands of enough rating, or takes the weight of a part before its bolts come out.',
  example: 'support vehicle with axle-stands at sill-points',
});
