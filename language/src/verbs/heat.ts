// heat: warm something up.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const heat = defineVerb({
  word: 'heat',
  on: { part: IN_REACH, fastener: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  clauses: {
    to: measured(['temperature'], 'The temperature.'),
    by: measured(['temperature difference'], 'How much warmer.'),
    for: measured(['time'], 'How long.'),
    with: named(AIDS, 'The heater.'),
  },
  minutes: 3,
  readies: true,
  phrase: {
    en: 'Heat {object}[ to {to}][ by {by}][ for {for}][ with {with}]',
    es: 'Calentar {object}[ a {to}][ {by} más][ durante {for}][ con {with}]',
    fr: 'Chauffer {object}[ à {to}][ : {by} de plus][ pendant {for}][ avec {with}]',
    de: '{object}[ auf {to}][ um {by}][ {for} lang][ mit {with}] erwärmen',
  },
  done: 'heated',
  docs: 'Warms something up, such as a bearing before it goes on. No open flame near fuel, hoses or sealed units.',
  example: 'heat bearing-ring to 90 °C with induction-heater',
});
