// cut: cut through something.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const cut = defineVerb({
  word: 'cut',
  on: { part: IN_REACH, fastener: IN_REACH, connection: IN_REACH, place: IN_REACH, supply: IN_REACH },
  object: 'one or more',
  bare: measured(['length'], 'How long.'),
  clauses: {
    at: named(SPOTS, 'Where.'),
    to: named(['place'], 'The mark.'),
    with: named(AIDS, 'The knife, saw or shears.'),
  },
  minutes: 2,
  readies: true,
  phrase: {
    en: 'Cut {object}[, {amount},][ to {to}][ at {at}][ with {with}]',
    es: 'Cortar {object}[, {amount},][ hasta {to}][ en {at}][ con {with}]',
    fr: 'Couper {object}[, {amount},][ jusqu’à {to}][ ({at})][ avec {with}]',
    de: '{object}[, {amount},][ bis {to}][ mit {with}] schneiden[ ({at})]',
  },
  done: 'cut',
  docs: 'Cuts a tie, a gasket, a hose or old sealant.',
  example: 'cut cable-tie with side-cutters',
});
