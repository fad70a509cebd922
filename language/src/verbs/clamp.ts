// clamp: squeeze a hose shut, or hold work fast.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const clamp = defineVerb({
  word: 'clamp',
  on: { connection: IN_REACH, part: IN_REACH, place: IN_REACH },
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where.'),
    in: named(['tool', 'temporary'], 'The vice.'),
    with: named(AIDS, 'The clamp.'),
  },
  minutes: 0.5,
  readies: true,
  phrase: {
    en: 'Clamp {object}[ in {in}][ at {at}][ with {with}]',
    es: 'Sujetar con mordaza {object}[ en {in}][ en {at}][ con {with}]',
    fr: 'Pincer {object}[ dans {in}][ ({at})][ avec {with}]',
    de: '{object}[ in {in}][ mit {with}] einspannen[ ({at})]',
  },
  done: 'clamped',
  docs: 'Squeezes a hose shut or holds work in a vice. `release` lets go; a clamp that could be forgotten is better declared under `temporary`.',
  example: 'clamp brake-hose with hose-pliers',
});
