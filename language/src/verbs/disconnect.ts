// disconnect: take plugs, hoses, pipes and leads off.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const disconnect = defineVerb({
  word: 'disconnect',
  on: { connection: { needs: ['connected', 'free', 'reachable'], makes: ['disconnected'] } },
  object: 'one or more',
  clauses: {
    from: named(SPOTS, 'What it comes off.'),
    at: named(SPOTS, 'Where on the vehicle.'),
    with: named(AIDS, 'The tool, when it is worth naming.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Disconnect {object}[ from {from}][ at {at}][ with {with}]',
    es: 'Desconectar {object}[ de {from}][ en {at}][ con {with}]',
    fr: 'Débrancher {object}[ (sur {from})][ ({at})][ avec {with}]',
    de: '{object}[ von {from}][ mit {with}] trennen[ ({at})]',
  },
  done: 'disconnected',
  docs: 'Takes a plug, hose, pipe or lead off. Opening a hydraulic circuit lets air in and fluid out.',
  example: 'disconnect pipe-at-master',
});
