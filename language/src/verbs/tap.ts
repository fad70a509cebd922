// tap: strike lightly.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const tap = defineVerb({
  word: 'tap',
  on: { part: IN_REACH, fastener: IN_REACH, place: IN_REACH, connection: IN_REACH },
  object: 'one or more',
  bare: measured(['count'], 'How many blows.'),
  clauses: {
    into: named(SPOTS, 'What it goes into.'),
    at: named(SPOTS, 'Where to strike.'),
    with: named(AIDS, 'The mallet or drift.'),
  },
  minutes: 0.3,
  drives: true,
  phrase: {
    en: 'Tap {object}[, {amount},][ into {into}][ at {at}][ with {with}], light blows only',
    es: 'Golpear suavemente {object}[, {amount},][ en {into}][ en {at}][ con {with}]',
    fr: 'Tapoter {object}[, {amount},][ dans {into}][ ({at})][ avec {with}]',
    de: '{object}[, {amount},][ in {into}][ mit {with}] mit leichten Schlägen klopfen[ ({at})]',
  },
  done: 'tapped',
  docs: 'Strikes something lightly to seat or free it. It does not cut a thread.',
  example: 'tap hub with soft-mallet',
});
