// lock: hold something with its lock, pin or tab.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const lock = defineVerb({
  word: 'lock',
  on: {
    part: IN_REACH,
    fastener: IN_REACH,
    connection: IN_REACH,
    adjustment: IN_REACH,
    condition: IN_REACH,
    place: IN_REACH,
    machine: EVENT,
  },
  machines: ['engine', 'suspension', 'vehicle'],
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where.'),
    with: named(AIDS, 'The pin or lock.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Lock {object}[ at {at}][ with {with}]',
    es: 'Bloquear {object}[ en {at}][ con {with}]',
    fr: 'Bloquer {object}[ ({at})][ avec {with}]',
    de: '{object}[ mit {with}] verriegeln[ ({at})]',
  },
  done: 'locked',
  docs: 'Holds something in place with its lock, tab or pin. A pin that must come out again is better declared under `temporary`.',
  example: 'lock crankshaft with timing-pin',
});
