// press: push something with force.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const press = defineVerb({
  word: 'press',
  on: { part: IN_REACH, fastener: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  bare: measured(['length', 'force'], 'How far, or how hard.'),
  clauses: {
    into: named(SPOTS, 'What it goes into.'),
    from: named(SPOTS, 'What it comes out of.'),
    to: named(SPOTS, 'The edge or mark it stops at.'),
    for: measured(['time'], 'How long.'),
    with: named(AIDS, 'The press, drift or sleeve.'),
  },
  minutes: 2,
  drives: true,
  readies: true,
  phrase: {
    en: 'Press {object}[, {amount},][ into {into}][ out of {from}][ to {to}][ for {for}][ with {with}]',
    es: 'Prensar {object}[, {amount},][ dentro de {into}][ fuera de {from}][ hasta {to}][ durante {for}][ con {with}]',
    fr: 'Presser {object}[, {amount},][ dans {into}][ (depuis {from})][ jusqu’à {to}][ pendant {for}][ avec {with}]',
    de: '{object}[, {amount},][ in {into}][ aus {from}][ bis {to}][ {for} lang][ mit {with}] pressen',
  },
  done: 'pressed',
  docs: 'Pushes something with force: a bush in a press, a pedal, a button. What is off or on is said with `remove` and `install`.',
  example: 'press bush into lower-arm with press-sleeve',
});
