// turn: rotate something.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const turn = defineVerb({
  word: 'turn',
  on: {
    part: IN_REACH,
    fastener: IN_REACH,
    place: IN_REACH,
    connection: IN_REACH,
    adjustment: IN_REACH,
    machine: EVENT,
  },
  machines: ['engine'],
  object: 'one or more',
  bare: measured(['angle', 'count'], 'How far.'),
  clauses: {
    to: named(SPOTS, 'The mark it stops at.'),
    with: named(AIDS, 'The bar or tool.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Turn {object}[ by {amount}][ to {to}][ with {with}]',
    es: 'Girar {object}[ {amount}][ hasta {to}][ con {with}]',
    fr: 'Tourner {object}[ : {amount}][ jusqu’à {to}][ avec {with}]',
    de: '{object}[ um {amount}][ bis {to}][ mit {with}] drehen',
  },
  done: 'turned',
  docs: 'Rotates a shaft, wheel, screw or the engine by hand.',
  example: 'turn driveshaft, 1/2 turn',
});
