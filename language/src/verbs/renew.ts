// renew: use a new one from here on.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, EVENT, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const renew = defineVerb({
  word: 'renew',
  on: {
    part: { needs: ['out to renew'], makes: ['renewed'] },
    fastener: { needs: ['out to renew'], makes: ['renewed'] },
    connection: { needs: ['out to renew'], makes: ['renewed'] },
    fluid: { needs: ['out to renew'], makes: ['renewed'] },
    supply: EVENT,
  },
  object: 'one or more',
  clauses: {
    with: named(AIDS, 'What replaces it.'),
    at: named(SPOTS, 'Where.'),
  },
  minutes: 1,
  phrase: {
    en: 'Renew {object}[ with {with}][ at {at}]',
    es: 'Sustituir {object}[ por {with}][ en {at}]',
    fr: 'Remplacer {object}[ par {with}][ ({at})]',
    de: '{object}[ durch {with}] ersetzen[ ({at})]',
  },
  done: 'renewed',
  docs: 'Takes a new one in place of the old one. It stays off until `install`, a hose or lead until `connect`; the pull list gets one more.',
  example: 'renew disc: Renew both discs on the axle.',
});
