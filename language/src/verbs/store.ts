// store: keep a part for later.
import { defineVerb } from '../vocabulary/verb.js';
import { EVENT, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const store = defineVerb({
  word: 'store',
  on: { part: EVENT, fastener: EVENT, connection: EVENT, fluid: EVENT, supply: EVENT },
  object: 'one or more',
  clauses: {
    in: named(['tool', 'temporary', 'place'], 'The tray or bag.'),
    at: named(SPOTS, 'Where.'),
  },
  minutes: 0.3,
  phrase: {
    en: 'Keep {object}[ in {in}][ at {at}]',
    es: 'Guardar {object}[ en {in}][ en {at}]',
    fr: 'Conserver {object}[ dans {in}][ ({at})]',
    de: '{object}[ in {in}] aufbewahren[ ({at})]',
  },
  done: 'kept',
  docs: 'Says that a part is kept, in order and clean, because it goes back, is evidence, or keeps the power off.',
  example: 'store cam-cap in cap-tray',
});
