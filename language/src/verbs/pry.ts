// pry: lever something off or apart.
import { defineVerb } from '../vocabulary/verb.js';
import { AIDS, IN_REACH, named, SPOTS } from '../vocabulary/verb-shorthand.js';

export const pry = defineVerb({
  word: 'pry',
  on: { part: IN_REACH, connection: IN_REACH, fastener: IN_REACH, place: IN_REACH },
  object: 'one or more',
  clauses: {
    from: named(SPOTS, 'What it comes off.'),
    at: named(SPOTS, 'Where to put the bar.'),
    with: named(AIDS, 'The bar or lever.'),
  },
  minutes: 0.5,
  drives: true,
  phrase: {
    en: 'Pry {object}[ from {from}][ at {at}][ with {with}]',
    es: 'Hacer palanca: {object}[ de {from}][ en {at}][ con {with}]',
    fr: 'Faire levier : {object}[ (sur {from})][ ({at})][ avec {with}]',
    de: '{object}[ von {from}][ mit {with}] abhebeln[ ({at})]',
  },
  done: 'pried loose',
  docs: 'Levers something loose. What is off afterwards is said with `remove`.',
  example: 'pry shaft-seal with seal-puller',
});
