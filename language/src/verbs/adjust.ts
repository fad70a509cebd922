// adjust: bring a setting back to its limit.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const adjust = defineVerb({
  word: 'adjust',
  on: { adjustment: { needs: ['reachable'], makes: ['adjusted'] }, part: IN_REACH },
  object: 'one or more',
  bare: measured(['length', 'angle', 'count', 'pressure', 'force'], 'By how much.'),
  clauses: {
    to: named(SPOTS, 'What it is set to.'),
    at: named(SPOTS, 'Where.'),
    with: named([...AIDS, 'fastener'], 'The tool, or the screw that sets it.'),
  },
  minutes: 5,
  phrase: {
    en: 'Adjust {object}[ by {amount}][ to {to}][ at {at}][ with {with}]',
    es: 'Ajustar {object}[ {amount}][ a {to}][ en {at}][ con {with}]',
    fr: 'Régler {object}[ : {amount}][ sur {to}][ ({at})][ avec {with}]',
    de: '{object}[ um {amount}][ auf {to}][ mit {with}] einstellen[ ({at})]',
  },
  done: 'adjusted',
  docs: 'Brings a setting that the work has upset back to its limit. Measure the limit afterwards.',
  example: 'adjust front-toe',
});
