// torque: tighten fasteners to their torque.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, worded } from '../vocabulary/verb-shorthand.js';

export const torque = defineVerb({
  word: 'torque',
  on: {
    fastener: {
      needs: [
        'none out',
        'held thing in',
        'reachable',
        'posture',
        'torque clock',
        'snug first',
        'earlier stages',
        'not spent',
        'has torque',
      ],
      makes: ['torqued'],
    },
  },
  object: 'one or more',
  bare: measured(['torque', 'angle'], 'A torque for this line alone; else the one of the fastener.'),
  clauses: {
    stage: worded('The stage of a staged torque; without it, all stages to the last.'),
    order: worded('Order for this line alone.'),
    per: worded('The sheet that a value on this line comes from.'),
    'on ground': worded('With the vehicle on its wheels.'),
    'at ride height': worded('With the suspension loaded as on the road.'),
    with: named(AIDS, 'The wrench, crowfoot or extension.'),
  },
  minutes: 0.5,
  suits: ['torque', 'offset'],
  phrase: {
    en: 'Torque {object}[, stage {stage}][ in the order {order}][ to {amount}][ with {with}]',
    es: 'Apretar {object} al par[, etapa {stage}][, en el orden {order}][: {amount}][, con {with}]',
    fr: 'Serrer {object} au couple[, étape {stage}][, dans l’ordre {order}][ : {amount}][, avec {with}]',
    de: '{object}[, Stufe {stage},][ in der Reihenfolge {order}][ mit {with}] mit Drehmoment festziehen[: {amount}]',
  },
  done: 'torqued',
  docs: 'Tightens all fasteners of a set to their declared torque, in its order and posture. A set that is used once must be new; an angle follows a snug torque.',
  example: 'torque hub-bolt',
});
