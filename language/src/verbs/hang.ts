// hang: put a part aside, still on its hoses or leads.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const hang = defineVerb({
  word: 'hang',
  on: { part: { needs: ['hangable', 'free', 'reachable'], makes: ['hung'] } },
  object: 'one or more',
  clauses: {
    from: named(SPOTS, 'What carries it.'),
    on: named(SPOTS, 'What carries it.'),
    at: named(SPOTS, 'Where it hangs.'),
    with: named(AIDS, 'The wire, hook or strap.'),
  },
  minutes: 1,
  readies: true,
  phrase: {
    en: 'Hang {object}[ from {from}][ on {on}][ at {at}][ with {with}]',
    es: 'Colgar {object}[ de {from}][ en {on}][ en {at}][ con {with}]',
    fr: 'Suspendre {object}[ à {from}][ sur {on}][ ({at})][ avec {with}]',
    de: '{object}[ von {from}][ an {on}][ mit {with}] aufhängen[ ({at})]',
  },
  done: 'hung aside',
  docs: 'Takes a part off but leaves its hoses or leads connected, and hangs it so that nothing pulls on them. It must still be installed again.',
  example: 'hang caliper with hook-wire: Keep the hose slack.',
});
