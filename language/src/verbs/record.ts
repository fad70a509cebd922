// record: write a value on the record sheet.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const record = defineVerb({
  word: 'record',
  on: {
    part: EVENT,
    fastener: EVENT,
    connection: EVENT,
    circuit: EVENT,
    fluid: EVENT,
    adjustment: EVENT,
    condition: EVENT,
    limit: EVENT,
    supply: EVENT,
    place: EVENT,
    tool: EVENT,
    machine: EVENT,
  },
  machines: ['odometer', 'codes', 'engine', 'vehicle'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where it is read.'),
    with: named(AIDS, 'What it is read with.'),
  },
  minutes: 0.5,
  records: 'objects',
  isAboutCodes: true,
  phrase: {
    en: 'Record {object}[ at {at}][ with {with}]',
    es: 'Anotar {object}[ en {at}][ con {with}]',
    fr: 'Noter {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] notieren[ ({at})]',
  },
  phraseFor: {
    fluid: {
      en: 'Record the amount of {object}[ at {at}][ with {with}]',
      es: 'Anotar la cantidad: {object}[ en {at}][ con {with}]',
      fr: 'Noter la quantité : {object}[ ({at})][ avec {with}]',
      de: 'Menge notieren: {object}[ ({at})][ mit {with}]',
    },
  },
  done: 'recorded',
  docs: 'Puts a blank on the record sheet for a value that the technician writes down.',
  example: 'record odometer',
});
