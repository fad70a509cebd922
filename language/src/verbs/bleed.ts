// bleed: take the air out of a hydraulic circuit.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const bleed = defineVerb({
  word: 'bleed',
  on: { circuit: { needs: ['circuit closed', 'holds fluid'], makes: ['bled'] } },
  object: 'one or more',
  bare: measured(['count', 'volume', 'pressure'], 'How many strokes, or how much.'),
  clauses: {
    at: named(SPOTS, 'The bleed screw or valve.'),
    with: named(AIDS, 'The bottle, hose or machine.'),
  },
  minutes: 10,
  phrase: {
    en: 'Bleed {object}[, {amount},][ at {at}][ with {with}]',
    es: 'Purgar {object}[, {amount},][ por {at}][ con {with}]',
    fr: 'Purger {object}[, {amount},][ ({at})][ avec {with}]',
    de: '{object}[, {amount},][ mit {with}] entlüften[ ({at})]',
  },
  done: 'bled',
  docs: 'Takes the air out of a circuit. It leaves the bleed screws snug, to be torqued, and the fluid level to be checked.',
  example: 'bleed clutch-circuit at bleed-screw with bleed-bottle',
});
