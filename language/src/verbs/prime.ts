// prime: fill a pump, filter or line before it runs.
import { defineVerb } from '../vocabulary/verb.js';
import { IN_REACH, measured, named, WET_AIDS } from '../vocabulary/verb-shorthand.js';

export const prime = defineVerb({
  word: 'prime',
  on: { part: IN_REACH, circuit: IN_REACH, connection: IN_REACH, place: IN_REACH },
  object: 'one or more',
  bare: measured(['volume', 'count'], 'How much, or how many strokes.'),
  clauses: {
    with: named(WET_AIDS, 'The fluid or pump.'),
  },
  minutes: 2,
  phrase: {
    en: 'Prime {object}[, {amount},][ with {with}]',
    es: 'Cebar {object}[, {amount},][ con {with}]',
    fr: 'Amorcer {object}[, {amount},][ avec {with}]',
    de: '{object}[, {amount},][ mit {with}] vorfüllen',
  },
  done: 'primed',
  docs: 'Fills a pump, filter or line with its fluid so that it does not run dry.',
  example: 'prime fuel-filter, 20 times with hand-pump',
});
