// fill: put fluid in.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const fill = defineVerb({
  word: 'fill',
  on: { fluid: { needs: ['fill open', 'closed', 'fill clock'], makes: ['filled'] } },
  object: 'one or more',
  bare: measured(['volume', 'mass'], 'How much; else the amount declared.'),
  clauses: {
    'until level at': named(SPOTS, 'The mark or edge that says full.'),
    at: named(SPOTS, 'Where it goes in.'),
    from: named(['supply', 'tool', 'temporary'], 'The can or bottle.'),
    with: named(AIDS, 'The funnel or pump.'),
  },
  minutes: 5,
  phrase: {
    en: 'Fill with {object}[, {amount},][ at {at}][ from {from}][ with {with}][ until level at {until level at}]',
    es: 'Llenar con {object}[, {amount},][ por {at}][ desde {from}][ con {with}][ hasta el nivel de {until level at}]',
    fr: 'Remplir avec {object}[, {amount},][ ({at})][ depuis {from}][ avec {with}][ jusqu’au niveau : {until level at}]',
    de: '{object}[, {amount},][ aus {from}][ mit {with}] einfüllen[ ({at})][, Füllhöhe: {until level at}]',
  },
  done: 'filled',
  docs: 'Puts fluid in. The filler must be open, the drain and every cover closed and torqued, and sealant cured long enough. Without an end mark the level is still to be checked.',
  example: 'fill drive-oil, 17 US pt, until level at fill-plug',
});
