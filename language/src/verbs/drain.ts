// drain: let a fluid out.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const drain = defineVerb({
  word: 'drain',
  on: { fluid: { needs: ['drain open'], makes: ['drained'] } },
  object: 'one or more',
  bare: measured(['volume', 'mass'], 'How much, when not all.'),
  clauses: {
    into: named(['temporary', 'tool'], 'The pan or tank that takes it.'),
    at: named(SPOTS, 'Where it runs out.'),
    with: named(AIDS, 'The pump or hose.'),
    for: measured(['time'], 'How long it runs.'),
  },
  minutes: 5,
  phrase: {
    en: 'Drain {object}[, {amount},][ into {into}][ at {at}][ with {with}][ for {for}]',
    es: 'Vaciar {object}[, {amount},][ en {into}][ por {at}][ con {with}][ durante {for}]',
    fr: 'Vidanger {object}[, {amount},][ dans {into}][ ({at})][ avec {with}][ pendant {for}]',
    de: '{object}[, {amount},][ in {into}][ mit {with}][ {for} lang] ablassen[ ({at})]',
  },
  done: 'drained',
  docs: 'Lets a fluid out at its drain point. The plug must be out; a cover that is cracked open to drain may keep some slack bolts in.',
  example: 'drain drive-oil into drain-pan',
});
