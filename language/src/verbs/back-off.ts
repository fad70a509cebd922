// back-off: turn a fastener or adjuster back.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named } from '../vocabulary/verb-shorthand.js';

export const backOff = defineVerb({
  word: 'back-off',
  on: {
    fastener: { needs: ['reachable', 'tight enough'], makes: ['loose'] },
    adjustment: { needs: ['reachable'], makes: ['disturbed'] },
    part: IN_REACH,
  },
  object: 'one or more',
  takesCount: true,
  bare: measured(['angle', 'count', 'length'], 'How far.'),
  clauses: {
    with: named(AIDS, 'The tool, when it is worth naming.'),
  },
  minutes: 0.3,
  turns: true,
  phrase: {
    en: 'Back off {object}[ by {amount}][ with {with}]',
    es: 'Girar hacia atrás {object}[ {amount}][ con {with}]',
    fr: 'Dévisser {object}[ : {amount}][ avec {with}]',
    de: '{object}[ um {amount}][ mit {with}] zurückdrehen',
  },
  done: 'backed off',
  docs: 'Turns a fastener or an adjuster back. The fastener is loose, the setting upset, until it is torqued or adjusted again.',
  example: 'back-off shoe-adjuster, 6 flats',
});
