// bend: bend tabs, pins or brackets.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const bend = defineVerb({
  word: 'bend',
  on: { part: IN_REACH, fastener: IN_REACH, connection: IN_REACH, place: IN_REACH },
  object: 'one or more',
  bare: measured(['angle', 'length'], 'How far.'),
  clauses: {
    to: named(SPOTS, 'Against what.'),
    with: named(AIDS, 'The pliers.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Bend {object}[ by {amount}][ to {to}][ with {with}]',
    es: 'Doblar {object}[ {amount}][ hacia {to}][ con {with}]',
    fr: 'Plier {object}[ : {amount}][ vers {to}][ avec {with}]',
    de: '{object}[ um {amount}][ zu {to}][ mit {with}] biegen',
  },
  done: 'bent',
  docs: 'Bends a lock tab, the legs of a split pin or a bracket.',
  example: 'bend axle-nut-pin with side-pliers',
});
