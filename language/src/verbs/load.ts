// load: put the suspension under load.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const load = defineVerb({
  word: 'load',
  on: { machine: { needs: ['up'], makes: ['loaded'] } },
  machines: ['suspension'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where the load goes in.'),
    with: named(AIDS, 'The jack.'),
  },
  minutes: 2,
  isUnderOneArm: true,
  phrase: {
    en: 'Load {object}[ at {at}][ with {with}]',
    es: 'Cargar {object}[ en {at}][ con {with}]',
    fr: 'Mettre en charge {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] belasten[ ({at})]',
  },
  done: 'loaded',
  docs: 'Lifts the suspension of a raised vehicle as if it stood on the road, for bushes that are torqued at ride height.',
  example: 'load suspension at lower-arm with trolley-jack',
});
