// evacuate: pull a vacuum on a circuit.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const evacuate = defineVerb({
  word: 'evacuate',
  on: { circuit: { needs: ['circuit closed'], makes: ['bled'] } },
  object: 'one or more',
  bare: measured(['time', 'pressure'], 'How long, or down to which pressure.'),
  clauses: {
    at: named(SPOTS, 'The service port.'),
    with: named(AIDS, 'The vacuum pump.'),
  },
  minutes: 5,
  phrase: {
    en: 'Evacuate {object}[, {amount},][ at {at}][ with {with}]',
    es: 'Hacer vacío en {object}[, {amount},][ por {at}][ con {with}]',
    fr: 'Tirer au vide {object}[, {amount},][ ({at})][ avec {with}]',
    de: '{object}[, {amount},][ mit {with}] evakuieren[ ({at})]',
  },
  done: 'evacuated',
  docs: 'Pulls a vacuum on a closed circuit, which takes air and moisture out before it is charged.',
  example: 'evacuate ac-circuit, 30 min with vacuum-pump',
});
