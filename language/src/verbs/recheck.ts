// recheck: check again after some use.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, measured, named } from '../vocabulary/verb-shorthand.js';

export const recheck = defineVerb({
  word: 'recheck',
  on: {
    fastener: EVENT,
    fluid: EVENT,
    connection: EVENT,
    adjustment: EVENT,
    limit: EVENT,
    part: EVENT,
    circuit: EVENT,
  },
  object: 'one or more',
  clauses: {
    after: measured(['length', 'time'], 'When: distance or time in use.'),
    with: named(AIDS, 'The tool.'),
  },
  minutes: 2,
  bothSides: 'one line',
  later: true,
  phrase: {
    en: 'Recheck {object}[ after {after}][ with {with}]',
    es: 'Volver a comprobar {object}[ después de {after}][ con {with}]',
    fr: 'Recontrôler {object}[ après {after}][ avec {with}]',
    de: '{object}[ nach {after}][ mit {with}] nachprüfen',
  },
  phraseFor: {
    fluid: {
      en: 'Recheck the level of {object}[ after {after}][ with {with}]',
      es: 'Volver a comprobar el nivel: {object}[ después de {after}][ con {with}]',
      fr: 'Recontrôler le niveau : {object}[ après {after}][ avec {with}]',
      de: 'Füllstand nachprüfen: {object}[ nach {after}][ mit {with}]',
    },
  },
  done: 'rechecked',
  docs: 'Asks for a check when the vehicle has been used for a while; it goes on the record as a return visit.',
  example: 'recheck wheel-nut, after 80 km',
});
