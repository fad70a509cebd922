// calibrate: teach a sensor or gauge its true values.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const calibrate = defineVerb({
  word: 'calibrate',
  on: { part: EVENT, adjustment: EVENT, limit: EVENT, circuit: EVENT, tool: EVENT, machine: EVENT },
  machines: ['vehicle', 'engine', 'suspension'],
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The target, jig or scan tool.'),
    at: named(SPOTS, 'Where.'),
  },
  minutes: 15,
  phrase: {
    en: 'Calibrate {object}[ at {at}][ with {with}]',
    es: 'Calibrar {object}[ en {at}][ con {with}]',
    fr: 'Étalonner {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] kalibrieren[ ({at})]',
  },
  done: 'calibrated',
  docs: 'Teaches a sensor, gauge or control unit its true values.',
  example: 'calibrate steering-sensor with scan-tool',
});
