// program: load a control unit or a key.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named } from '../vocabulary/verb-shorthand.js';

export const program = defineVerb({
  word: 'program',
  on: { part: EVENT, machine: EVENT },
  machines: ['vehicle', 'engine'],
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The programmer.'),
  },
  minutes: 15,
  phrase: {
    en: 'Program {object}[ with {with}]',
    es: 'Programar {object}[ con {with}]',
    fr: 'Programmer {object}[ avec {with}]',
    de: '{object}[ mit {with}] programmieren',
  },
  done: 'programmed',
  docs: 'Loads software or settings into a control unit, or teaches a key. The battery must be kept charged.',
  example: 'program door-module with scan-tool',
});
