// stake: lock a nut or pin by deforming metal.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const stake = defineVerb({
  word: 'stake',
  on: { fastener: IN_REACH, part: IN_REACH, place: IN_REACH },
  object: 'one or more',
  clauses: {
    into: named(SPOTS, 'The groove.'),
    at: named(SPOTS, 'Where.'),
    with: named(AIDS, 'The punch.'),
  },
  minutes: 1,
  phrase: {
    en: 'Stake {object}[ into {into}][ at {at}][ with {with}]',
    es: 'Fijar por punzonado {object}[ en {into}][ en {at}][ con {with}]',
    fr: 'Mater {object}[ dans {into}][ ({at})][ avec {with}]',
    de: '{object}[ in {into}][ mit {with}] verstemmen[ ({at})]',
  },
  done: 'staked',
  docs: 'Locks a nut or pin by driving its collar into a groove. A staked nut is used once.',
  example: 'stake axle-nut into spindle-groove with punch',
});
