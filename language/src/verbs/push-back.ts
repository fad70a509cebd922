// push-back: press a piston back into its bore.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const pushBack = defineVerb({
  word: 'push-back',
  on: { part: IN_REACH, place: IN_REACH, fastener: IN_REACH },
  object: 'one or more',
  bare: measured(['length'], 'How far.'),
  clauses: {
    into: named(SPOTS, 'The bore.'),
    with: named(AIDS, 'The spreader.'),
  },
  minutes: 1,
  phrase: {
    en: 'Push back {object}[ by {amount}][ into {into}][ with {with}]',
    es: 'Hacer retroceder {object}[ {amount}][ en {into}][ con {with}]',
    fr: 'Repousser {object}[ : {amount}][ dans {into}][ avec {with}]',
    de: '{object}[ um {amount}][ in {into}][ mit {with}] zurückdrücken',
  },
  done: 'pushed back',
  docs: 'Presses a piston back into its bore. The pedal has no travel left afterwards: pump it before the vehicle moves.',
  example: 'push-back caliper-piston with piston-spreader',
});
