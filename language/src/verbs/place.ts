// place: put a temporary thing where it is needed.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const place = defineVerb({
  word: 'place',
  on: { temporary: { needs: ['away', 'reachable'], makes: ['placed'] } },
  object: 'one or more',
  clauses: {
    at: named(SPOTS, 'Where.'),
    on: named(SPOTS, 'What it sits on.'),
    in: named(SPOTS, 'What it goes in.'),
    into: named(SPOTS, 'What it goes into.'),
    with: named(AIDS, 'The tool.'),
  },
  minutes: 0.5,
  phrase: {
    en: 'Place {object}[ on {on}][ in {in}][ into {into}][ at {at}][ with {with}]',
    es: 'Colocar {object}[ sobre {on}][ en {in}][ dentro de {into}][ en {at}][ con {with}]',
    fr: 'Placer {object}[ sur {on}][ dans {in}][ dans {into}][ ({at})][ avec {with}]',
    de: '{object}[ auf {on}][ in {in}][ in {into}][ mit {with}] platzieren[ ({at})]',
  },
  done: 'placed',
  docs: 'Puts a temporary thing where it is needed. It must be removed before the job ends, and before anything is closed over it.',
  example: 'place drain-pan',
});
