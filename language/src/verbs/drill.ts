// drill: drill a hole, or a fastener out.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, measured, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const drill = defineVerb({
  word: 'drill',
  on: { part: IN_REACH, fastener: IN_REACH, place: IN_REACH },
  object: 'one or more',
  bare: measured(['length'], 'Diameter or depth.'),
  clauses: {
    at: named(SPOTS, 'Where.'),
    with: named(AIDS, 'The drill.'),
  },
  minutes: 3,
  phrase: {
    en: 'Drill {object}[, {amount},][ at {at}][ with {with}]',
    es: 'Taladrar {object}[, {amount},][ en {at}][ con {with}]',
    fr: 'Percer {object}[, {amount},][ ({at})][ avec {with}]',
    de: '{object}[, {amount},][ mit {with}] bohren[ ({at})]',
  },
  done: 'drilled',
  docs: 'Drills a hole, a rivet or a broken stud. The thing is off only after `remove`.',
  example: 'drill shield-rivet with rivet-drill',
});
