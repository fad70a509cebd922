// deflate: let air or gas out.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const deflate = defineVerb({
  word: 'deflate',
  on: { part: IN_REACH, place: IN_REACH },
  object: 'one or more',
  bare: measured(['pressure'], 'To which pressure.'),
  clauses: {
    with: named(AIDS, 'The valve tool.'),
  },
  minutes: 1,
  phrase: {
    en: 'Deflate {object}[ to {amount}][ with {with}]',
    es: 'Desinflar {object}[ a {amount}][ con {with}]',
    fr: 'Dégonfler {object}[ à {amount}][ avec {with}]',
    de: 'Luft ablassen: {object}[ bis {amount}][ mit {with}]',
  },
  done: 'deflated',
  docs: 'Lets air or gas out, all of it or down to the pressure named.',
  example: 'deflate tyre',
});
