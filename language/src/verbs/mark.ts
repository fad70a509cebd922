// mark: make a mark to find a position or a torque again.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const mark = defineVerb({
  word: 'mark',
  on: {
    part: IN_REACH,
    fastener: IN_REACH,
    connection: IN_REACH,
    adjustment: IN_REACH,
    place: IN_REACH,
    supply: EVENT,
    temporary: EVENT,
  },
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where.'),
    on: named(SPOTS, 'On what.'),
    to: named(SPOTS, 'Against what.'),
    with: named(AIDS, 'The paint or scriber.'),
  },
  minutes: 0.3,
  phrase: {
    en: 'Mark {object}[ to {to}][ on {on}][ at {at}][ with {with}]',
    es: 'Marcar {object}[ respecto a {to}][ sobre {on}][ en {at}][ con {with}]',
    fr: 'Repérer {object}[ par rapport à {to}][ sur {on}][ ({at})][ avec {with}]',
    de: '{object}[ zu {to}][ auf {on}][ mit {with}] markieren[ ({at})]',
  },
  done: 'marked',
  docs: 'Makes a mark: where something sat before it came off, or that a fastener has had its torque.',
  example: 'mark hub-bolt with paint-pen',
});
