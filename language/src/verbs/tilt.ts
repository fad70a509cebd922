// tilt: lean a cab, part or vehicle over.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const tilt = defineVerb({
  word: 'tilt',
  on: { part: IN_REACH, place: IN_REACH, machine: EVENT },
  machines: ['vehicle', 'engine'],
  object: 'one or more',
  bare: measured(['angle'], 'How far.'),
  clauses: {
    to: named(['place'], 'The position.'),
    with: named(AIDS, 'The pump or prop.'),
  },
  minutes: 2,
  phrase: {
    en: 'Tilt {object}[ by {amount}][ to {to}][ with {with}]',
    es: 'Inclinar {object}[ {amount}][ hacia {to}][ con {with}]',
    fr: 'Basculer {object}[ : {amount}][ vers {to}][ avec {with}]',
    de: '{object}[ um {amount}][ nach {to}][ mit {with}] kippen',
  },
  done: 'tilted',
  docs: 'Leans a cab, a part or the vehicle over.',
  example: 'tilt cab with cab-pump',
});
