// raise: lift the vehicle.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const raise = defineVerb({
  word: 'raise',
  on: { machine: { needs: ['on ground'], makes: ['raised'] } },
  machines: ['vehicle'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'The lifting points.'),
    with: named(AIDS, 'The jack or lift.'),
  },
  minutes: 2,
  suits: ['rated'],
  phrase: {
    en: 'Raise {object}[ at {at}][ with {with}]',
    es: 'Levantar {object}[ en {at}][ con {with}]',
    fr: 'Lever {object}[ avec {with}][ ({at})]',
    de: '{object}[ mit {with}] anheben[ ({at})]',
  },
  done: 'raised',
  docs: 'Lifts the vehicle. On a jack it is not supported yet: nobody works under it until `support`.',
  example: 'raise vehicle with trolley-jack at sill-points',
});
