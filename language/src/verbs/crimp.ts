// crimp: press a sleeve or terminal on.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const crimp = defineVerb({
  word: 'crimp',
  on: { connection: IN_REACH, part: IN_REACH, fastener: IN_REACH },
  object: 'one or more',
  clauses: {
    to: named(SPOTS, 'What it goes on.'),
    with: named(AIDS, 'The crimping pliers.'),
  },
  minutes: 1,
  readies: true,
  phrase: {
    en: 'Crimp {object}[ to {to}][ with {with}]',
    es: 'Engarzar {object}[ en {to}][ con {with}]',
    fr: 'Sertir {object}[ sur {to}][ avec {with}]',
    de: '{object}[ an {to}][ mit {with}] crimpen',
  },
  done: 'crimped',
  docs: 'Presses a sleeve, terminal or ferrule on with the tool made for it.',
  example: 'crimp lead-terminal with crimp-pliers',
});
