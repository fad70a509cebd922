// top-up: add fluid up to the mark.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const topUp = defineVerb({
  word: 'top-up',
  on: { fluid: { needs: ['fill open', 'closed', 'fill clock'], makes: ['topped'] } },
  object: 'one or more',
  bare: measured(['volume', 'mass'], 'How much at most.'),
  clauses: {
    'until level at': named(SPOTS, 'The mark or edge that says full.'),
    at: named(SPOTS, 'Where it goes in.'),
    from: named(['supply', 'tool', 'temporary'], 'The can or bottle.'),
    with: named(AIDS, 'The funnel or pump.'),
  },
  minutes: 2,
  phrase: {
    en: 'Top up {object}[, {amount},][ at {at}][ from {from}][ with {with}][ until level at {until level at}]',
    es: 'Completar el nivel: {object}[, {amount},][ por {at}][ desde {from}][ con {with}][ hasta {until level at}]',
    fr: 'Faire l’appoint : {object}[, {amount},][ ({at})][ depuis {from}][ avec {with}][ jusqu’au niveau : {until level at}]',
    de: '{object}[, {amount},][ aus {from}][ mit {with}] nachfüllen[ ({at})][, Füllhöhe: {until level at}]',
  },
  done: 'topped up',
  docs: 'Adds fluid up to the mark.',
  example: 'top-up clutch-fluid until level at max-mark',
});
