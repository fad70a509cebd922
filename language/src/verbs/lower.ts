// lower: bring the vehicle down on its wheels.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named } from '../vocabulary/verb-shorthand.js';

export const lower = defineVerb({
  word: 'lower',
  on: { machine: { needs: ['up', 'suspension free', 'wheels on'], makes: ['lowered'] } },
  machines: ['vehicle'],
  object: 'one or more',
  clauses: {
    to: named(['place'], 'Onto what.'),
    with: named(AIDS, 'The jack or lift.'),
  },
  minutes: 2,
  wholeVehicle: true,
  phrase: {
    en: 'Lower {object}[ to {to}][ with {with}]',
    es: 'Bajar {object}[ hasta {to}][ con {with}]',
    fr: 'Descendre {object}[ sur {to}][ avec {with}]',
    de: '{object}[ auf {to}][ mit {with}] absenken',
  },
  done: 'lowered',
  docs: 'Brings the vehicle down on its wheels; stands and jack are away with it. Wheels must be on with their nuts at least snug.',
  example: 'lower vehicle',
});
