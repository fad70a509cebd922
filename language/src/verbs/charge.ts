// charge: fill a circuit by mass, or a battery.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const charge = defineVerb({
  word: 'charge',
  on: { fluid: { needs: ['closed', 'fill clock'], makes: ['filled'] }, part: IN_REACH },
  object: 'one or more',
  bare: measured(
    ['mass', 'volume', 'pressure', 'time', 'voltage', 'electric charge'],
    'How much, or how long.',
  ),
  clauses: {
    at: named(SPOTS, 'The service port or the terminals.'),
    with: named(AIDS, 'The charging machine or charger.'),
  },
  minutes: 10,
  phrase: {
    en: 'Charge {object}[, {amount},][ at {at}][ with {with}]',
    es: 'Cargar {object}[, {amount},][ por {at}][ con {with}]',
    fr: 'Charger {object}[, {amount},][ ({at})][ avec {with}]',
    de: '{object}[, {amount},][ mit {with}] laden[ ({at})]',
  },
  phraseFor: {
    fluid: {
      en: 'Charge {object}[, {amount},][ at {at}][ with {with}]',
      es: 'Cargar {object}[, {amount},][ por {at}][ con {with}]',
      fr: 'Charger {object}[, {amount},][ ({at})][ avec {with}]',
      de: '{object}[, {amount},][ mit {with}] einfüllen[ ({at})]',
    },
  },
  done: 'charged',
  docs: 'Puts refrigerant or gas in by mass, or charges a battery or accumulator. A circuit must be closed and torqued first.',
  example: 'charge ac-refrigerant, 550 g',
});
