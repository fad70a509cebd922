// relieve: let stored pressure out.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const relieve = defineVerb({
  word: 'relieve',
  on: { circuit: EVENT, fluid: EVENT, part: EVENT, connection: EVENT },
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where it is let out.'),
    with: named(AIDS, 'The hose or gauge.'),
  },
  minutes: 2,
  phrase: {
    en: 'Relieve the pressure in {object}[ at {at}][ with {with}]',
    es: 'Aliviar la presión: {object}[ en {at}][ con {with}]',
    fr: 'Faire chuter la pression : {object}[ ({at})][ avec {with}]',
    de: 'Druck abbauen: {object}[ ({at})][ mit {with}]',
  },
  done: 'relieved of pressure',
  docs: 'Lets stored pressure out before anything is opened: fuel rail, accumulator, air tank, cooling system.',
  example: 'relieve fuel-circuit at rail-valve',
});
