// snug: seat fasteners without the final torque.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, worded } from '../vocabulary/verb-shorthand.js';

export const snug = defineVerb({
  word: 'snug',
  on: { fastener: { needs: ['none out', 'held thing in', 'reachable'], makes: ['snug'] } },
  object: 'one or more',
  clauses: {
    order: worded('Order for this line.'),
    with: named(AIDS, 'The tool, when it is worth naming.'),
  },
  minutes: 0.2,
  turns: true,
  suits: ['torque', 'offset'],
  phrase: {
    en: 'Snug {object}[ in the order {order}][ with {with}], not to final torque',
    es: 'Aproximar {object}[ en el orden {order}][ con {with}], sin par final',
    fr: 'Approcher {object}[ dans l’ordre {order}][ avec {with}], sans couple final',
    de: '{object}[ in der Reihenfolge {order}][ mit {with}] beiziehen, noch nicht festziehen',
  },
  done: 'snug',
  docs: 'Seats fasteners evenly without the final torque. Wheels need at least this before the vehicle is lowered.',
  example: 'snug wheel-nut',
});
