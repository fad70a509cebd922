// recover: draw a refrigerant or fluid off into a machine or bottle.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const recover = defineVerb({
  word: 'recover',
  on: { fluid: { needs: ['holds fluid'], makes: ['drained'] } },
  object: 'one or more',
  bare: measured(['mass', 'volume'], 'How much is expected.'),
  clauses: {
    into: named(AIDS, 'The bottle or machine that takes it.'),
    at: named(SPOTS, 'The service port.'),
    with: named(AIDS, 'The recovery machine.'),
  },
  minutes: 15,
  phrase: {
    en: 'Recover {object}[, {amount},][ into {into}][ at {at}][ with {with}]',
    es: 'Recuperar {object}[, {amount},][ en {into}][ por {at}][ con {with}]',
    fr: 'Récupérer {object}[, {amount},][ dans {into}][ ({at})][ avec {with}]',
    de: '{object}[, {amount},][ in {into}][ mit {with}] absaugen[ ({at})]',
  },
  done: 'recovered',
  docs: 'Draws a refrigerant or another fluid off into a machine, never into the air. Refrigerant work is licensed; local codes come first.',
  example: 'recover ac-refrigerant with recovery-machine',
});
