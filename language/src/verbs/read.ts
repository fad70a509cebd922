// read: take a value off a gauge, a display or a control unit.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, RESULT, SPOTS } from '../vocabulary/verb-shorthand.js';

export const read = defineVerb({
  word: 'read',
  on: {
    limit: RESULT,
    place: RESULT,
    part: RESULT,
    tool: RESULT,
    fluid: RESULT,
    adjustment: RESULT,
    machine: { needs: [], makes: ['outcome'] },
  },
  machines: ['odometer', 'codes', 'engine', 'vehicle'],
  object: 'one or more',
  clauses: {
    at: named([...SPOTS, 'tool'], 'Where: a place, or what shows the value.'),
    with: named(AIDS, 'The reader.'),
  },
  minutes: 1,
  isAboutCodes: true,
  phrase: {
    en: 'Read {object}[ at {at}][ with {with}]',
    es: 'Leer {object}[ en {at}][ con {with}]',
    fr: 'Lire {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] ablesen[ ({at})]',
  },
  done: 'read',
  docs: 'Takes a value off a gauge, a display or a control unit.',
  example: 'read codes with scan-tool',
});
