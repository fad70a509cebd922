// lubricate: oil or grease something.
import { defineVerb } from '../vocabulary/verb.js';
import { IN_REACH, named, WET_AIDS } from '../vocabulary/verb-shorthand.js';

export const lubricate = defineVerb({
  word: 'lubricate',
  on: { part: IN_REACH, fastener: IN_REACH, connection: IN_REACH, place: IN_REACH, adjustment: IN_REACH },
  object: 'one or more',
  clauses: {
    with: named(WET_AIDS, 'The oil or grease.'),
  },
  minutes: 1,
  goesOnto: true,
  readies: true,
  suits: ['grease'],
  phrase: {
    en: 'Lubricate {object}[ with {with}]',
    es: 'Lubricar {object}[ con {with}]',
    fr: 'Lubrifier {object}[ avec {with}]',
    de: '{object}[ mit {with}] schmieren',
  },
  done: 'lubricated',
  docs: 'Oils or greases something. Oil on threads changes the torque: declare the fastener `oiled`.',
  example: 'lubricate slide-pin with brake-grease',
});
