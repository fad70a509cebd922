// ventilate: let fresh air in.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, measured, named } from '../vocabulary/verb-shorthand.js';

export const ventilate = defineVerb({
  word: 'ventilate',
  on: { place: EVENT, part: EVENT },
  alone: EVENT,
  object: 'optional',
  clauses: {
    with: named(AIDS, 'The fan or extraction.'),
    for: measured(['time'], 'How long.'),
  },
  minutes: 1,
  phrase: {
    en: 'Ventilate[ {object}][ with {with}][ for {for}]',
    es: 'Ventilar[ {object}][ con {with}][ durante {for}]',
    fr: 'Ventiler[ {object}][ avec {with}][ pendant {for}]',
    de: '[{object} ][mit {with} ][{for} lang ]lüften',
  },
  done: 'ventilated',
  docs: 'Lets fresh air in, or draws fumes out, before and during work with solvents, fuel or exhaust.',
  example: 'ventilate paint-bay with extraction-fan',
});
