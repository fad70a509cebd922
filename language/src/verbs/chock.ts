// chock: put chocks at wheels.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named } from '../vocabulary/verb-shorthand.js';

export const chock = defineVerb({
  word: 'chock',
  on: { place: { needs: ['not chocked'], makes: ['chocked'] } },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The chocks.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Chock {object}[ with {with}]',
    es: 'Calzar {object}[ con {with}]',
    fr: 'Caler {object}[ avec {with}]',
    de: '{object}[ mit {with}] gegen Wegrollen sichern',
  },
  done: 'chocked',
  docs: 'Puts chocks at the wheels of a place so that the vehicle cannot roll. They must come away before it drives.',
  example: 'chock rear-wheels',
});
