// inflate: put air or gas in.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const inflate = defineVerb({
  word: 'inflate',
  on: { part: IN_REACH, place: IN_REACH },
  object: 'one or more',
  bare: measured(['pressure'], 'To which pressure.'),
  clauses: {
    with: named(AIDS, 'The inflator and gauge.'),
  },
  minutes: 2,
  phrase: {
    en: 'Inflate {object}[ to {amount}][ with {with}]',
    es: 'Inflar {object}[ a {amount}][ con {with}]',
    fr: 'Gonfler {object}[ à {amount}][ avec {with}]',
    de: '{object}[ auf {amount}][ mit {with}] befüllen',
  },
  done: 'inflated',
  docs: 'Puts air or gas in, to the pressure named.',
  example: 'inflate tyre, 450 kPa',
});
