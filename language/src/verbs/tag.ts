// tag: put a label on.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const tag = defineVerb({
  word: 'tag',
  on: {
    part: IN_REACH,
    connection: IN_REACH,
    fastener: IN_REACH,
    place: IN_REACH,
    temporary: EVENT,
    tool: EVENT,
    supply: EVENT,
    machine: EVENT,
  },
  machines: ['vehicle'],
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'The tag.'),
    at: named(SPOTS, 'Where.'),
  },
  minutes: 0.3,
  phrase: {
    en: 'Tag {object}[ at {at}][ with {with}]',
    es: 'Etiquetar {object}[ en {at}][ con {with}]',
    fr: 'Étiqueter {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] kennzeichnen[ ({at})]',
  },
  done: 'tagged',
  docs: 'Puts a label on: which hose goes where, or that a machine must not be started.',
  example: 'tag supply-hose, return-line',
});
