// pull: draw something out or off.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const pull = defineVerb({
  word: 'pull',
  on: { part: IN_REACH, fastener: IN_REACH, connection: IN_REACH, place: IN_REACH },
  object: 'one or more',
  bare: measured(['length', 'force', 'count'], 'How far, how hard, or how many clicks.'),
  clauses: {
    from: named(SPOTS, 'What it comes out of.'),
    with: named(AIDS, 'The puller.'),
  },
  minutes: 1,
  drives: true,
  phrase: {
    en: 'Pull {object}[, {amount},][ from {from}][ with {with}]',
    es: 'Extraer {object}[, {amount},][ de {from}][ con {with}]',
    fr: 'Extraire {object}[, {amount},][ (sur {from})][ avec {with}]',
    de: '{object}[, {amount},][ aus {from}][ mit {with}] herausziehen',
  },
  done: 'pulled',
  docs: 'Draws something with a puller or by hand. What comes off for good is said with `remove`.',
  example: 'pull axle-flange with hub-puller',
});
